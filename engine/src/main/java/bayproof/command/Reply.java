package bayproof.command;

/**
 * What a command has to say.
 *
 * @param status exit status
 * @param out    text for standard output; may be empty
 * @param err    text for standard error; may be empty
 */
record Reply(int status, String out, String err) {
    /** Nothing counts against the job, or a question was answered. */
    static final int CLEAR = 0;
    /** Something counts against the job. */
    static final int COUNTS = 1;
    /** Wrong usage, input that cannot be used, or nothing to judge. */
    static final int UNUSABLE = 2;
    /** A fault of the tool. */
    static final int FAULT = 3;

    static Reply answer(String out) {
        return new Reply(CLEAR, out, "");
    }
}
