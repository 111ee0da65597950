package dapple.light.metrology;

/**
 * What lights the points of one enclosure, from one change of lamps, cover or heights to the next. A lamp kept for
 * reference is one too: it burns so few hours that it hardly declines.
 *
 * @param key another one after each change
 */
public record LampSet(String key, DeclineOfClass decline) {}
