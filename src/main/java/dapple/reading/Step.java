package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;

/**
 * One thing to read on a visit.
 *
 * @param first whether it is what is asked first at its point
 */
record Step(PointFacts point, Quantity quantity, boolean first) {
    Place place() {
        return new Place(point.id(), quantity);
    }

    /** Whether it may be left for another time. */
    public boolean isSkippable() {
        return quantity != Quantity.UV_INDEX;
    }

    /** A quantity at a point. */
    record Place(long pointId, Quantity quantity) {}
}
