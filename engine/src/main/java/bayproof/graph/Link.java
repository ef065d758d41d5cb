package bayproof.graph;

import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.vocabulary.Shown;

/** One conducting edge of the wiring: a run, the inside of a fuse or block, the contacts of a relay, or the way through the body. Has identity. */
public final class Link {
    /** What the edge is. */
    public enum Kind { RUN, FUSE, CONTACTS, BODY }

    private final Kind kind;
    private final String id;
    private final String from;
    private final String to;
    private final Run run;
    private final Item item;
    private final Shown<Double> ratingAmperes;

    private Link(Kind kind, String id, String from, String to, Run run, Item item, Shown<Double> ratingAmperes) {
        this.kind = kind;
        this.id = id;
        this.from = from;
        this.to = to;
        this.run = run;
        this.item = item;
        this.ratingAmperes = ratingAmperes;
    }

    static Link ofRun(Run run, String from, String to) {
        return new Link(Kind.RUN, run.id(), from, to, run, null, null);
    }

    static Link ofFuse(Item item, String id, String from, String to, Shown<Double> ratingAmperes) {
        return new Link(Kind.FUSE, id, from, to, null, item, ratingAmperes);
    }

    static Link ofContacts(Item.Relay relay, String from, String to) {
        return new Link(Kind.CONTACTS, relay.id(), from, to, null, relay, null);
    }

    static Link ofBody(Item.GroundPoint point, String from, String to) {
        return new Link(Kind.BODY, point.id(), from, to, null, point, null);
    }

    public Kind kind() {
        return kind;
    }

    /** Id of the run, of the fuse (with its outlet in a block), of the relay or of the ground point. */
    public String id() {
        return id;
    }

    public String from() {
        return from;
    }

    public String to() {
        return to;
    }

    public String other(String end) {
        return end.equals(from) ? to : from;
    }

    /** The run; null for other kinds. */
    public Run run() {
        return run;
    }

    /** The fuse, block, relay or ground point; null for a run. */
    public Item item() {
        return item;
    }

    /** Rating of the fuse; null for other kinds. */
    public Shown<Double> ratingAmperes() {
        return ratingAmperes;
    }
}
