package bayproof.graph;

/** What a run is for, told by the terminals it joins. */
public enum Role {
    FEED, RETURN, SPEAKER, SIGNAL, CONTROL, UNKNOWN;

    public boolean isPower() {
        return this == FEED || this == RETURN || this == UNKNOWN;
    }
}
