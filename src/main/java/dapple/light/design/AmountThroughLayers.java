package dapple.light.design;

/** What falls on the receiver through a number of layers, in the unit of the quantity. */
public record AmountThroughLayers(int layers, double amount) {}
