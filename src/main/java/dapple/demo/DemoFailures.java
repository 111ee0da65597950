package dapple.demo;

import static dapple.demo.DemoRows.number;

import dapple.light.quantity.Quantity;
import dapple.site.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;

/** What went wrong in the demo's enclosures without a word on record, so that readings alone tell of it. */
record DemoFailures(List<Failure> failures) {
    static DemoFailures read() {
        return new DemoFailures(ReferenceTable.rows("demo/failures.csv", Failure::of));
    }

    /** How many times the light that the lamps give there is what arrives in a week. */
    double times(String enclosure, int week, Quantity quantity) {
        return failures.stream()
                .filter(failure -> failure.isAt(enclosure, week))
                .filter(failure -> failure.kind() != Kind.OTHER_HEIGHT)
                .mapToDouble(failure -> failure.times(quantity))
                .reduce(1, (one, other) -> one * other);
    }

    /** How far readings of a week scatter besides what is usual, as a share. */
    double scatter(String enclosure, int week) {
        return failures.stream()
                .filter(failure -> failure.isAt(enclosure, week) && failure.kind() == Kind.OTHER_HEIGHT)
                .mapToDouble(Failure::uvIndexTimes)
                .sum();
    }

    boolean isRead(String enclosure, int week) {
        return failures.stream()
                .noneMatch(failure -> failure.isAt(enclosure, week) && failure.kind() == Kind.NOT_READ);
    }

    /** What can go wrong. */
    enum Kind {
        SWAPPED_UNLOGGED,
        WRONG_GRADE,
        SHELF_RAISED,
        GLASS_CLOSED,
        MESH_CHANGED,
        REFLECTOR_TURNED,
        WARM_UP,
        NOT_BURNT_IN,
        OTHER_HEIGHT,
        NOT_READ,
        WRONG_ENCLOSURE
    }

    /**
     * One of them.
     *
     * @param fromWeek of the story, counted from 1
     * @param toWeek the last one
     * @param uvIndexTimes of a point that is held elsewhere each time: the scatter, as a share
     */
    record Failure(
            String enclosure,
            int fromWeek,
            int toWeek,
            Kind kind,
            double uvIndexTimes,
            double illuminanceTimes,
            String what) {
        static Failure of(NamedCsvRecord row) {
            return new Failure(
                    row.getField("enclosure"),
                    Integer.parseInt(row.getField("from_week")),
                    Integer.parseInt(row.getField("to_week")),
                    Kind.valueOf(row.getField("kind")),
                    number(row, "uvi_times"),
                    number(row, "lux_times"),
                    row.getField("what"));
        }

        boolean isAt(String other, int week) {
            return enclosure.equals(other) && week >= fromWeek && week <= toWeek;
        }

        private double times(Quantity quantity) {
            return quantity == Quantity.ILLUMINANCE ? illuminanceTimes : uvIndexTimes;
        }
    }
}
