package dapple.reading;

import dapple.light.quantity.Quantity;

/** A quantity that has been read at a point before. */
public record StepKnown(long pointId, Quantity quantity) {}
