package bayproof.figure;

import static bayproof.figure.Input.quantities;
import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.size;
import static bayproof.figure.Input.yesNo;
import static bayproof.figure.RuleFigure.AT;
import static bayproof.figure.RuleFigure.SUBJECT;
import static bayproof.units.Units.print;

import bayproof.figure.RuleFigure.Asked;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.ChargingRun;
import bayproof.vocabulary.FedAmplifiers;
import bayproof.vocabulary.FuseDuty;
import bayproof.vocabulary.FuseLoad;
import bayproof.vocabulary.GuardedRun;
import bayproof.vocabulary.Holder;
import bayproof.vocabulary.RelayCoil;
import bayproof.vocabulary.RelayContacts;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SourceKind;
import bayproof.vocabulary.SourceRun;
import bayproof.vocabulary.StepDown;
import java.util.List;

/** Rules on fuses, asked by hand. */
final class ProtectionRules {
    private static final Shown<Boolean> YES = Shown.of(true);
    private static final Shown<Double> ZERO = Shown.of(0.0);

    private ProtectionRules() {
    }

    static List<RuleFigure> all() {
        Input fuse = quantity("fuse", Dimension.CURRENT, "rating of the fuse");
        Input sheathed = yesNo("sheathed", "whether all of it lies in a closed tube or enclosure");
        return List.of(
                new RuleFigure("fuse-near-battery", List.of(quantity("length", Dimension.LENGTH, "conductor from the battery post to the fuse, all pieces together"), sheathed),
                        "length=1.20 m sheathed=no", given -> Asked.of(new SourceRun(SUBJECT, AT, "", SourceKind.BATTERY, YES, given.shown("length"),
                        given.shownYes("sheathed"), null))),
                new RuleFigure("fuse-near-charging-source", List.of(quantity("length", Dimension.LENGTH, "conductor from the output to the fuse, all pieces together")),
                        "length=15 cm", given -> Asked.of(new ChargingRun(SUBJECT, AT, "", YES, YES, given.shown("length"), null))),
                new RuleFigure("fuse-at-size-step", List.of(quantity("length", Dimension.LENGTH, "smaller conductor before the fuse that fits it"), sheathed),
                        "length=20 cm sheathed=no", given -> Asked.of(new StepDown(SUBJECT, AT, YES, YES, given.shown("length"), given.shownYes("sheathed"), null))),
                new RuleFigure("fuse-within-ampacity", List.of(fuse, size("size", "size of the conductor that the fuse guards"), ConductorNumbers.insulation(),
                        ConductorNumbers.ambient(), ConductorNumbers.metal()), "fuse=80 A size=4 AWG insulation=105 °C ambient=50 °C", given -> {
                            double most = ConductorNumbers.ampacity(given);
                            return new Asked(new GuardedRun(SUBJECT, AT, YES, "", Shown.of(Sums.share(given.number("fuse"), most)), null, null),
                                    print(given.number("fuse"), Dimension.CURRENT) + " / " + print(most, Dimension.CURRENT) + " (" + ConductorNumbers.ampacityText(given) + ")");
                        }),
                new RuleFigure("fuse-above-loud-load", List.of(quantity("current", Dimension.CURRENT, "current at loud programme"), fuse), "current=30 A fuse=40 A",
                        given -> new Asked(new FuseLoad(SUBJECT, AT, share(given), ZERO, null), shareText(given))),
                new RuleFigure("fuse-above-sine-load", List.of(quantity("current", Dimension.CURRENT, "current at full sine"), fuse), "current=60 A fuse=80 A",
                        given -> new Asked(new FuseLoad(SUBJECT, AT, ZERO, share(given), null), shareText(given))),
                new RuleFigure("own-fuses-within-feed-fuse", List.of(quantities("own", Dimension.CURRENT, "fuses on the amplifiers that the fuse feeds"), fuse),
                        "own=20 A, 20 A fuse=40 A", given -> new Asked(new FedAmplifiers(SUBJECT, AT, Shown.of(given.sum("own")), given.shown("fuse")), "added up")),
                new RuleFigure("fuse-stands-the-volts", List.of(quantity("volts", Dimension.VOLTAGE, "highest volts of its circuit"),
                        quantity("rated", Dimension.VOLTAGE, "volts that the fuse is rated for")), "volts=14.8 V rated=32 V", given -> Asked.of(
                        new FuseDuty(SUBJECT, AT, given.shown("volts"), given.shown("rated"), ZERO, ZERO))),
                new RuleFigure("fuse-breaks-the-fault", List.of(quantity("volts", Dimension.VOLTAGE, "battery volts at rest"),
                        quantities("resistance", Dimension.RESISTANCE, "inner resistance of the battery, and of the conductors to the fuse"),
                        quantity("breaks", Dimension.CURRENT, "largest current that the fuse can interrupt")), "volts=12.6 V resistance=9 mohm breaks=2000 A", given -> new Asked(
                        new FuseDuty(SUBJECT, AT, ZERO, ZERO, Shown.of(Sums.shortAmperes(given.number("volts"), given.sum("resistance"))), given.shown("breaks")),
                        print(given.number("volts"), Dimension.VOLTAGE) + " / " + print(given.sum("resistance"), Dimension.RESISTANCE))),
                new RuleFigure("holder-carries-fuse", List.of(fuse, quantity("holder", Dimension.CURRENT, "current that the holder or outlet is made for")),
                        "fuse=80 A holder=60 A", given -> Asked.of(new Holder(SUBJECT, AT, given.shown("fuse"), given.shown("holder"), null))),
                new RuleFigure("relay-carries-its-fuse", List.of(fuse, quantity("contacts", Dimension.CURRENT, "current that the contacts are made for")),
                        "fuse=40 A contacts=30 A", given -> Asked.of(new RelayContacts(SUBJECT, AT, YES, given.shown("fuse"), given.shown("contacts"), null))),
                new RuleFigure("relay-coil-fused", List.of(fuse), "fuse=10 A", given -> Asked.of(new RelayCoil(SUBJECT, AT, YES, YES, given.shown("fuse"), YES))));
    }

    private static Shown<Double> share(Given given) {
        return Shown.of(Sums.share(given.number("current"), given.number("fuse")));
    }

    private static String shareText(Given given) {
        return print(given.number("current"), Dimension.CURRENT) + " / " + print(given.number("fuse"), Dimension.CURRENT);
    }
}
