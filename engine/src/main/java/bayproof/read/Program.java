package bayproof.read;

import bayproof.vocabulary.Shown;

/** What is loaded into an interface. */
public record Program(@Field(key = "date", says = "day the program was loaded") Shown<String> date,
                      @Field(key = "loaded-for", says = "vehicle variant the program was loaded for") Shown<String> loadedFor,
                      @Field(key = "firmware-wanted", says = "firmware its maker asks for with this vehicle") Shown<String> firmwareWanted,
                      @Field(key = "firmware-found", says = "firmware that the interface reports") Shown<String> firmwareFound,
                      @Field(key = "login", says = "who holds the login to load it again", words = {"shop", "installer", "customer", "lost"})
                      Shown<String> login) {
}
