/**
 * How readings are judged against limits: the uncertainty of a reading, guard bands, the ceiling, shade and gradient.
 * Amounts and limits are in the unit of the one quantity that is judged.
 */
package dapple.light.judging;
