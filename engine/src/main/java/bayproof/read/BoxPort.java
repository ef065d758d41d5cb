package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;

/** The port of a vented enclosure: round, or a slot by its width and height. */
public record BoxPort(@Field(key = "ports", says = "number of ports, all alike") Shown<Integer> count,
                      @Field(key = "port-diameter", says = "inner diameter of a round port", in = Dimension.LENGTH) Shown<Double> diameterMetres,
                      @Field(key = "port-slot-width", says = "inner width of a slot", in = Dimension.LENGTH) Shown<Double> slotWidthMetres,
                      @Field(key = "port-slot-height", says = "inner height of a slot", in = Dimension.LENGTH) Shown<Double> slotHeightMetres,
                      @Field(key = "port-length", says = "length of the port", in = Dimension.LENGTH) Shown<Double> lengthMetres,
                      @Field(key = "port-wall", says = "thickness of the port's own wall", in = Dimension.LENGTH) Shown<Double> wallMetres,
                      @Field(key = "port-clear", says = "free way from the port's ends to the next wall, trim or seat", in = Dimension.LENGTH)
                      Shown<Double> clearMetres) {
}
