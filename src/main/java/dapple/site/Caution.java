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
    /** Animals with little or no pigment need much less ultraviolet. */
    PIGMENT,
    /** Ultraviolet off or capped is a treatment: heat and visible light go on. */
    ORDER,
    /** A number is no diagnosis: the vet decides. */
    VET,
    /** Short-wave ultraviolet that a UV index meter cannot tell apart: a spectrum or a report is missing. */
    SPECTRUM,
    /** The spectrum has radiation shorter than the sun's: the lamp is faulty. */
    SHORT_WAVES,
    /** Mercury of a broken lamp. */
    MERCURY,
    /** A metal halide lamp without its outer glass or filter. */
    OUTER_GLASS,
    /** A rig that is new to its animals: who is let in when, and who watches. */
    FIRST_LIGHT
}
