package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.util.Map;

/** What every mounted thing has. */
public record Fitting(@Field(key = "mass", says = "mass of the item", in = Dimension.MASS) Shown<Double> massKilograms,
                      @Field(key = "mount", says = "how the item is held") Mount mount,
                      @Field(key = "clearance", says = "free space over the cooling surface where it is mounted", in = Dimension.LENGTH, zero = true)
                      Shown<Double> clearanceMetres,
                      @Field(key = "needs-clearance", says = "free space that its data sheet asks for", in = Dimension.LENGTH, zero = true)
                      Shown<Double> neededClearanceMetres,
                      @Field(key = "near", says = "clear distance from the item and its fasteners to this keep-out", in = Dimension.LENGTH, zero = true)
                      Map<String, Shown<Double>> near) {
}
