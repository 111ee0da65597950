package dapple.target;

import dapple.site.SourceMark;

/**
 * How many hours of light a day a species needs in one month, by its target.
 *
 * @param hours 0 to 24 h
 */
public record LightHours(double hours, SourceMark mark, String source) {}
