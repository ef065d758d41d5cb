package bayproof.vocabulary;

/** What kind of source a post belongs to. */
public enum SourceKind { BATTERY, ALTERNATOR, TRACTION_CONVERTER, CONVERTER }
