package bayproof.solve;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The fuse ratings that are made, in amperes, whatever the shape of the fuse. Immutable. */
public final class FuseLadder {
    private final List<Double> ratingsAmperes;

    /** @param ratingsAmperes ratings above 0, in any order, repeated or not */
    public FuseLadder(Collection<Double> ratingsAmperes) {
        this.ratingsAmperes = ratingsAmperes.stream().sorted().distinct().toList();
    }

    /** Ratings below a current in amperes, the nearest first. */
    public List<Double> below(double ratingAmperes) {
        return ratingsAmperes.stream().filter(each -> each < ratingAmperes).sorted(Comparator.reverseOrder()).toList();
    }

    /** Ratings from one current to another, both included, the smallest first. */
    public List<Double> between(double leastAmperes, double mostAmperes) {
        return ratingsAmperes.stream().filter(each -> each >= leastAmperes && each <= mostAmperes).toList();
    }

    /** Ratings above a current in amperes, the nearest first. */
    public List<Double> above(double ratingAmperes) {
        return ratingsAmperes.stream().filter(each -> each > ratingAmperes).toList();
    }
}
