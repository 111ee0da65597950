package dapple.site;

/**
 * The caution texts, by name: each stands once, in {@code messages.properties}, under {@code caution.NAME}. A form that can
 * lead to harm names the ones it needs, {@code fragment/caution} prints them, and a test checks that they are shown.
 */
public enum Caution {
    /** UV harms eyes and skin. */
    ULTRAVIOLET,
    /** Lamps and guards burn, and set dry things alight. */
    HEAT,
    /** Mains electricity in damp places. */
    MAINS,
    /** More ultraviolet than before: eyes and skin; the vet is asked first. */
    TARGET_RAISED,
    /** A number is no diagnosis: the vet decides. */
    VET
}
