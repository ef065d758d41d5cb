package bayproof.figure;

import static bayproof.figure.RuleFigure.AT;
import static bayproof.figure.RuleFigure.SUBJECT;

import bayproof.figure.RuleFigure.Asked;
import bayproof.read.InspectionList;
import bayproof.read.InspectionList.Point;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Inspected;
import bayproof.vocabulary.Shown;
import java.util.List;

/** Rules on what is measured during a look, asked by hand: all else about the look is taken as it should be. */
final class MeasuredLooks {
    private static final Shown<Boolean> YES = Shown.of(true);

    private MeasuredLooks() {
    }

    static List<RuleFigure> all() {
        return InspectionList.points().values().stream().filter(point -> point.measure() != null).map(MeasuredLooks::figure).toList();
    }

    private static RuleFigure figure(Point point) {
        return new RuleFigure(point.id(), List.of(Input.quantity("measured", point.measures(), point.measure().worst())), "measured=" + point.measure().suchAs(),
                given -> Asked.of(new Inspected(SUBJECT, AT, point.id(), YES, Shown.of(new Attestation(SUBJECT, SUBJECT, SUBJECT)), YES, YES, Shown.of(""), YES, YES,
                        given.shown("measured"))));
    }
}
