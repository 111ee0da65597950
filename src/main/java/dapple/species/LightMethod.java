package dapple.species;

/** How ultraviolet is offered. */
public enum LightMethod {
    /** A basking patch at the zone's strongest recorded range, falling to zero in shade. */
    SUNBEAM(2, 4),
    /** A low level over a large part of the space, falling to zero in shade. */
    SHADE(1, 2);

    private final int firstZone;
    private final int lastZone;

    LightMethod(int firstZone, int lastZone) {
        this.firstZone = firstZone;
        this.lastZone = lastZone;
    }

    /** Whether the method is usual in a UV zone [baines2016]. */
    boolean serves(int zone) {
        return zone >= firstZone && zone <= lastZone;
    }
}
