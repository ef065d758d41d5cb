package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.math.BigDecimal;

/** What a speaker's data sheet says of its cone and suspension, and of the room it takes. */
public record DriverData(@Field(key = "resonance", says = "free-air resonance, fs", in = Dimension.FREQUENCY) Shown<Double> resonanceHertz,
                         @Field(key = "mechanical-q", says = "mechanical Q at resonance, Qms") Shown<BigDecimal> mechanicalQ,
                         @Field(key = "electrical-q", says = "electrical Q at resonance, Qes") Shown<BigDecimal> electricalQ,
                         @Field(key = "equivalent-volume", says = "volume of air as stiff as the suspension, Vas", in = Dimension.VOLUME)
                         Shown<Double> equivalentCubicMetres,
                         @Field(key = "cone-area", says = "area of the cone, Sd", in = Dimension.AREA) Shown<Double> coneSquareMetres,
                         @Field(key = "travel", says = "linear travel to one side, Xmax", in = Dimension.LENGTH) Shown<Double> travelMetres,
                         @Field(key = "displacement", says = "room the speaker takes in a box", in = Dimension.VOLUME)
                         Shown<Double> displacementCubicMetres,
                         @Field(key = "box-volume", says = "net volume that one speaker is to have", in = Dimension.VOLUME)
                         Shown<Double> boxCubicMetres,
                         @Field(key = "mass", says = "mass of the speaker", in = Dimension.MASS) Shown<Double> massKilograms,
                         @Field(key = "depth", says = "mounting depth behind the face it is mounted on", in = Dimension.LENGTH)
                         Shown<Double> depthMetres) {
}
