package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;

/** How an item is held, and what its fasteners reach into. */
public record Mount(String path, At at,
                    @Field(key = "fastener", says = "kind of fastener", words = {"bolt-nut", "rivet-nut", "stud", "self-tapping",
                        "self-drilling", "strap", "clip", "adhesive"}) Shown<String> fastener,
                    @Field(key = "sits", says = "what it is fastened to", words = {"floor", "wall", "overhead"}) Shown<String> sits,
                    @Field(key = "fasteners", says = "number of fasteners") Shown<Integer> fasteners,
                    @Field(key = "thread", says = "thread of the fasteners", words = {"M4", "M5", "M6", "M8", "M10", "screw-4", "screw-5", "band"})
                    Shown<String> thread,
                    @Field(key = "tip", says = "how far the fastener's tip reaches past the panel", in = Dimension.LENGTH, zero = true)
                    Shown<Double> tipMetres,
                    @Field(key = "free-depth", says = "clear depth behind the panel", in = Dimension.LENGTH, zero = true)
                    Shown<Double> freeDepthMetres,
                    @Field(key = "behind", says = "what lies behind the panel; nothing is []") Shown<List<String>> behind,
                    @Field(key = "seen-by", says = "who looked behind the panel, and how") Shown<String> seenBy,
                    @Inline Seen seen) {
}
