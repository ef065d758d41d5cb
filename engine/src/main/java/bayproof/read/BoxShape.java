package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.util.List;

/** The outer form of an enclosure beside its height, width and greatest depth. */
public record BoxShape(@Field(key = "form", says = "outer form of the enclosure", words = {"box", "wedge", "l-shape", "pair"}) Shown<String> form,
                       @Field(key = "top-depth", says = "depth at the top of a wedge or an L", in = Dimension.LENGTH) Shown<Double> topMetres,
                       @Field(key = "step-height", says = "height of the step of an L", in = Dimension.LENGTH) Shown<Double> stepMetres,
                       @Field(key = "apart", says = "room between the boxes of a pair", in = Dimension.LENGTH, zero = true) Shown<Double> apartMetres,
                       @Field(key = "stands", says = "ways it may stand: as-drawn, turned, upside-down, on-its-back, on-its-side")
                       Shown<List<String>> stands,
                       @Field(key = "wall", says = "thickness of the walls", in = Dimension.LENGTH) Shown<Double> wallMetres) {
    /** Words for the ways an enclosure may stand. */
    public static final List<String> STANDS = List.of("as-drawn", "turned", "upside-down", "on-its-back", "on-its-side");
}
