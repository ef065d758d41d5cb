package bayproof.vocabulary;

/**
 * A planned item that is fastened to the vehicle.
 *
 * @param pierces         whether its fasteners reach into something
 * @param behind          the worst of what lies behind its fasteners
 * @param depthLeftMetres clear depth left beyond the tips of its fasteners
 * @param shorterTip      shorter fasteners
 * @param heavy           whether it is too heavy for weak fasteners
 * @param fastener        kind of its fasteners
 * @param rivetNuts       fasteners that hold a heavy part
 */
public record MountedItem(String subject, At at, Shown<Boolean> pierces, Shown<String> behind, Shown<Double> depthLeftMetres,
                          Knob shorterTip, Shown<Boolean> heavy, Shown<String> fastener, Knob rivetNuts) implements Fact {
}
