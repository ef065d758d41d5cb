package bayproof.read;

import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** Whose vehicle it is, and what its owner said to work that cannot be undone. */
public record Ownership(String path, At at,
                        @Field(key = "kind", says = "who owns the vehicle", words = {"customer", "leasing-company", "lender", "company", "dealer"})
                        Shown<String> kind,
                        @Field(key = "returns", says = "whether the vehicle goes back to somebody else as it was") Shown<Boolean> returns,
                        @Field(key = "returns-on", says = "day on which it goes back, year-month-day") Shown<String> returnsOn,
                        @Field(key = "agreed", says = "the owner's word to holes and cuts") Vouched agreed) {
}
