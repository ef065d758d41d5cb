package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** The current the finished vehicle draws asleep, read until it no longer falls. */
public record SleepTest(String path, At at,
                        @Field(key = "latches", says = "whether every latch was closed", words = {"closed", "open"}) Shown<String> latches,
                        @Field(key = "key", says = "distance of the key from the vehicle", in = Dimension.LENGTH) Shown<Double> keyMetres,
                        @Field(key = "meter", says = "how the meter went in", words = {"clamp", "in-line-unbroken", "circuit-broken"}) Shown<String> meter,
                        @Field(key = "charging", says = "whether the vehicle charged its own 12 V battery while the current was read", words = {"yes", "no"})
                        Shown<String> charging,
                        @Field(key = "first", says = "the first point") Point first,
                        @Field(key = "second", says = "the second point") Point second,
                        @Field(key = "third", says = "the third point") Point third,
                        @Inline Taking taking) {

    /** One point of it. */
    public record Point(String path, At at,
                        @Field(key = "after", says = "time since the vehicle was locked", in = Dimension.TIME) Shown<Double> afterSeconds,
                        @Field(key = "current", says = "current asleep", in = Dimension.CURRENT, zero = true) Shown<Double> amperes) {
    }
}
