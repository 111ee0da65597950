package dapple.target;

import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;

/**
 * One cell of a target, with where it comes from.
 *
 * @param band in the unit of the quantity; a ceiling and a shade limit use its high end only
 */
public record SourcedLimit(Quantity quantity, LimitPlace place, Band band, SourceMark mark, String source) {}
