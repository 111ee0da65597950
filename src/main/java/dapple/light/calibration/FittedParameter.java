package dapple.light.calibration;

import dapple.light.quantity.Interval;

/**
 * What a fit found for one parameter.
 *
 * @param standardUncertainty in the unit of the value
 * @param interval 95 %, within the range of the parameter; not always even about the value
 */
public record FittedParameter(Parameter parameter, double value, double standardUncertainty, Interval interval) {}
