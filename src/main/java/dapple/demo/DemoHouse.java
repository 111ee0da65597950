package dapple.demo;

import dapple.demo.DemoRows.Space;
import dapple.demo.DemoRows.Spot;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

/** An enclosure of the demo, and the points in it. */
record DemoHouse(Space space, long enclosureId, List<Place> places) {
    Place place(String code) {
        return places.stream()
                .filter(place -> place.spot().code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    String codeOf(long pointId) {
        return places.stream()
                .filter(place -> place.point().id() == pointId)
                .map(place -> place.spot().code())
                .findFirst()
                .orElseThrow();
    }

    /** A point, and what falls on it as the engine says. */
    record Place(Spot spot, PointFacts point, List<DemoPast.Lit> lit) {
        /** By the lamps, as they were at an instant; unknown where no lamp is. */
        OptionalDouble amount(Quantity quantity, Instant at) {
            return lit.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(lit.stream()
                            .mapToDouble(one -> one.amount(quantity, at))
                            .sum());
        }
    }
}
