package dapple.light.dose;

/**
 * A time in which nothing changed that readings depend on: one stay, one rig, not switched off on purpose. Readings say
 * nothing of another spell.
 */
public record Spell(Span during, Circumstance circumstance) {}
