package bayproof.handover;

/**
 * One value as planned and as built.
 *
 * @param what       what it is
 * @param planned    the planned, worked out or assumed value; empty where there was none
 * @param built      the value that was found
 * @param difference built less planned, or in words; empty where there is nothing to compare
 * @param limit      the limit a rule holds the value against; empty where none does
 * @param share      size of the difference as a share of the planned value; 0 where nothing is known
 * @param how        where, in which state, under which conditions, with what, by whom and when
 */
public record Built(String what, String planned, String built, String difference, String limit, double share, String how) {
}
