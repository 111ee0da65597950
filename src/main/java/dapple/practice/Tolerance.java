package dapple.practice;

import dapple.light.quantity.Quantity;

/** From what to what an amount may lie in a check, in the unit of the meter's quantity. */
record Tolerance(double lowest, double highest) {
    /** What a covered UV index meter may show, UVI (common practice, no source). */
    static final double DARK_UV_INDEX = 0.1;

    /** By what share a meter may show its reference lamp otherwise than at first (common practice, no source). */
    static final double LAMP_SHARE = 0.05;

    /** So that an amount on the limit lies within it, whatever the last binary digit says. */
    private static final double ROUNDING = 1e-9;

    /** One step of the display; of the UV index at least 0.1. */
    static Tolerance ofDarkZero(Quantity quantity, double resolution) {
        double most = quantity == Quantity.UV_INDEX ? Math.max(resolution, DARK_UV_INDEX) : resolution;
        return new Tolerance(-most, most);
    }

    static Tolerance ofLamp(double firstAmount) {
        return new Tolerance(firstAmount * (1 - LAMP_SHARE), firstAmount * (1 + LAMP_SHARE));
    }

    boolean includes(double amount) {
        double slack = ROUNDING * Math.max(Math.abs(lowest), Math.abs(highest));
        return amount >= lowest - slack && amount <= highest + slack;
    }
}
