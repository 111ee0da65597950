package dapple.order;

/** What a vet can order of the ultraviolet of one animal. */
public enum OrderKind {
    OWN_LIMITS,
    UV_OFF,
    /** A lower ceiling. */
    CAP
}
