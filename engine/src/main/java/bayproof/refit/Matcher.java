package bayproof.refit;

import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Pairs things of two vehicles that serve the same end: what was chosen first, then the one of the same name among those that may
 * serve, then the only one that no other thing took.
 */
final class Matcher {
    private final Map<String, Shown<String>> chosen;
    private final Function<String, List<String>> candidates;
    private final Function<String, String> kind;

    /**
     * @param chosen     what somebody chose
     * @param candidates what may serve in place of a thing
     * @param kind       what a thing is, as a phrase
     */
    Matcher(Map<String, Shown<String>> chosen, Function<String, List<String>> candidates, Function<String, String> kind) {
        this.chosen = chosen;
        this.candidates = candidates;
        this.kind = kind;
    }

    /** A counterpart for each thing, in their order. */
    Map<String, Counterpart> match(Iterable<String> things) {
        Map<String, Counterpart> matched = new LinkedHashMap<>();
        Set<String> taken = new TreeSet<>();
        for (String thing : things) {
            Counterpart sure = sure(thing);
            matched.put(thing, sure);
            if (sure != null) {
                taken.add(sure.found());
            }
        }
        for (String thing : things) {
            if (matched.get(thing) == null) {
                matched.put(thing, left(thing, taken));
            }
        }
        return matched;
    }

    private Counterpart sure(String thing) {
        String choice = chosen.getOrDefault(thing, Shown.of("")).orElse("");
        if (!choice.isEmpty()) {
            return Counterpart.of(thing, choice, "as chosen", kind.apply(thing));
        }
        return candidates.apply(thing).contains(thing) ? Counterpart.of(thing, thing, "same kind and name", kind.apply(thing)) : null;
    }

    private Counterpart left(String thing, Set<String> taken) {
        List<String> all = candidates.apply(thing);
        List<String> free = new ArrayList<>(all);
        free.removeAll(taken);
        if (free.size() == 1) {
            return Counterpart.of(thing, free.get(0), "the only one of its kind that is left", kind.apply(thing));
        }
        return new Counterpart(thing, null, "", free.isEmpty() ? all : free, kind.apply(thing));
    }
}
