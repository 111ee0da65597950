package dapple.light.design;

/**
 * What falls on the receiver when the lamp hangs at a height.
 *
 * @param heightMetres of the lamp's middle
 * @param amount in the unit of the quantity
 */
public record AmountAtHeight(double heightMetres, double amount) {}
