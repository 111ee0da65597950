package dapple.light.expectation;

/** What goes wrong when a number is read or typed; common practice, no source. */
public enum Slip {
    /** The point of the decimal was left out or is one place off. */
    DECIMAL_POINT,
    /** The number is of another unit of the same quantity. */
    WRONG_UNIT,
    /** The number is of another quantity that is read at this point. */
    WRONG_QUANTITY,
    /** The number is of another point of this enclosure. */
    POINT_MISSED,
    /** A lamp had not warmed up. */
    NOT_WARM,
    /** The sensor did not face the lamp, or was shaded. */
    SENSOR_TURNED,
    /** The sensor was nearer to the lamp than the point is. */
    TOO_NEAR,
    /** Another lamp hangs there than last week, or something stands between. */
    LIGHT_CHANGED
}
