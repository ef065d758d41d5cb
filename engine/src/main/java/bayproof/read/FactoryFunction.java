package bayproof.read;

import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** A function of the vehicle as it came and as it goes back. */
public record FactoryFunction(String id, String path, At at,
                              @Field(key = "before", says = "whether it worked when the vehicle came", words = {"works", "faulty", "not-fitted"})
                              Shown<String> before,
                              @Field(key = "after", says = "whether it works as the vehicle goes back", words = {"works", "faulty", "not-fitted"})
                              Shown<String> after) {
}
