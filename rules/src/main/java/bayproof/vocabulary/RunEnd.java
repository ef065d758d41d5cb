package bayproof.vocabulary;

/**
 * One end of a planned run that carries power, or of another run where somebody wrote how its ends are made.
 *
 * @param planned     whether this job makes it; otherwise the vehicle maker did
 * @param method      how the conductor is joined
 * @param barrel      whether a terminal's barrel or screw takes the conductor at all
 * @param crimped     whether the method is a crimp
 * @param tool        tool it is closed with
 * @param toolAtHand  whether that tool is on the shop's list
 * @param toolMatches whether that tool makes that kind of crimp
 * @param takes       cable size the terminal is made for
 * @param sizeMatches whether that is the size of the run
 * @param onStud     whether it ends at something with studs, screws or plugs
 * @param fitsStud    whether its terminal fits that
 * @param meets       both, for the report
 */
public record RunEnd(String subject, At at, Shown<Boolean> planned, Shown<String> method, Shown<Boolean> barrel, Shown<Boolean> crimped,
                     Shown<String> tool, Shown<Boolean> toolAtHand, Shown<Boolean> toolMatches, Shown<String> takes, Shown<Boolean> sizeMatches,
                     Shown<Boolean> onStud, Shown<Boolean> fitsStud, Shown<String> meets)
        implements Fact {
}
