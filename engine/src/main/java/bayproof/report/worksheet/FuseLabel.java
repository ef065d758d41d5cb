package bayproof.report.worksheet;

/**
 * What stands on the label beside a fuse.
 *
 * @param rating its rating; a blank where none is written
 * @param guards the cable behind it
 * @param tag    tag of the job
 */
record FuseLabel(String fuse, String rating, String guards, String tag) {
    static final String RULE = "Same rating only.";
}
