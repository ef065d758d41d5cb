package bayproof.solve;

/** Whether a source can be in a condition at the volts and currents found. */
final class Conditions {
    /** Slack of the inequalities that bound a condition, so that a point on a border lies in one of its two. */
    static final double SLACK = 1e-9;
    /** A share of the volts that no reversal of what one load does to another comes near. */
    private static final double CLEARLY = 0.05;

    private Conditions() {
    }

    /**
     * Whether a source would already have to be in a lower condition at volts that a solution can only lie below: further
     * steps lower the volts and make the sources give more, so that none can mend it. A clear share is left for sources on
     * grounds of their own.
     */
    static boolean isOutOfReach(Source source, Condition condition, double volts) {
        double holds = source instanceof Source.Battery battery ? battery.restVolts() : ((Source.Regulated) source).setVolts();
        return (condition == Condition.TAKING_ACCEPTANCE || condition == Condition.STANDING_BY) && volts < holds * (1 - CLEARLY);
    }

    /**
     * Whether what was found lies within the bounds of the condition.
     *
     * @param taken        what the source takes, A; negative for what it gives
     * @param slackAmperes how far a current may lie outside, A
     */
    static boolean isConsistent(Source source, Condition condition, double volts, double taken,
            double slackAmperes) {
        if (source instanceof Source.Battery battery) {
            double slackVolts = SLACK * battery.restVolts();
            return switch (condition) {
                case TAKING_ACCEPTANCE -> volts >= battery.restVolts() - slackVolts;
                case AT_REST_VOLTS -> taken >= -slackAmperes && taken <= battery.acceptanceAmperes() + slackAmperes;
                default -> volts <= battery.restVolts() + slackVolts;
            };
        }
        Source.Regulated regulated = (Source.Regulated) source;
        double slackVolts = SLACK * regulated.setVolts();
        return switch (condition) {
            case STANDING_BY -> volts >= regulated.setVolts() - slackVolts;
            case HOLDING_SET_POINT -> taken <= slackAmperes && taken >= -regulated.limitAmperes() - slackAmperes;
            default -> volts <= regulated.setVolts() + slackVolts;
        };
    }
}
