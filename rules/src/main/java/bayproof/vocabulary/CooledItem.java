package bayproof.vocabulary;

/**
 * A planned item that gives off heat.
 *
 * @param clearanceMetres free space over its cooling surface
 * @param sheetSpeaks     whether its data sheet asks for a figure of its own
 * @param neededMetres    that figure
 */
public record CooledItem(String subject, At at, Shown<Double> clearanceMetres, boolean sheetSpeaks, Shown<Double> neededMetres)
        implements Fact {
}
