package dapple.meter;

import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Quantity;

/** A meter as readings need it. */
public record MeterFacts(long id, String code, String description, Quantity quantity, MeterUncertainty uncertainty) {}
