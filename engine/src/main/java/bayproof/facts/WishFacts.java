package bayproof.facts;

import bayproof.read.Plan;
import bayproof.vocabulary.CustomerWish;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about what the customer wished; a wish that is asked at every check-in and was not written is a subject too. */
final class WishFacts {
    private final Model model;

    WishFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        Map<String, Plan.Wish> wishes = model.job.plan().wishes();
        if (wishes.isEmpty()) {
            facts.accept(unwritten("wishes", "what the customer wished; bayproof new asks seven questions"));
            return;
        }
        Set<String> asked = new LinkedHashSet<>(wishes.keySet());
        asked.addAll(model.limit("wishes-asked").words());
        for (String id : asked) {
            facts.accept(wishes.containsKey(id) ? wish(wishes.get(id)) : unwritten("wishes." + id, "the customer's wish: " + id));
        }
    }

    private CustomerWish wish(Plan.Wish wish) {
        List<String> rules = model.limit("wish-rules").words();
        Shown<Boolean> bound = wish.checkedBy().with(wish.with(), (by, with) -> !by.equals("rule") || rules.contains(with));
        return new CustomerWish(wish.path(), wish.at(), wish.want(), wish.want().map(want -> !want.equals("none")), wish.checkedBy(), wish.with(),
                bound, wish.kept());
    }

    private CustomerWish unwritten(String path, String ask) {
        Shown<String> missing = Shown.missing(new Need(path, ask, model.job.planAt()));
        Shown<Boolean> unsaid = missing.map(any -> true);
        return new CustomerWish(path, model.job.planAt(), missing, unsaid, missing, missing, unsaid, missing);
    }
}
