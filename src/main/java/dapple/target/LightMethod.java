package dapple.target;

/** How ultraviolet is offered. */
public enum LightMethod {
    /** A basking patch at the zone's strongest recorded range, falling to zero in shade. */
    SUNBEAM,
    /** A low level over a large part of the space, falling to zero in shade. */
    SHADE
}
