package dapple.practice;

/** How a meter is checked by its keepers. */
public enum CheckKind {
    /** With its sensor covered it must show nothing. */
    DARK_ZERO,
    /** Under one lamp, kept for this, it must show what it showed at first. */
    REFERENCE_LAMP
}
