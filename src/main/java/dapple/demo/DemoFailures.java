package dapple.demo;

import static dapple.demo.DemoRows.number;

import dapple.light.quantity.Quantity;
import dapple.site.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What went wrong in the demo's enclosures, most of it without a word on record, so that readings alone tell of it. */
record DemoFailures(List<Failure> failures) {
    static DemoFailures read() {
        return new DemoFailures(ReferenceTable.rows("demo/failures.csv", Failure::of));
    }

    /** How many times the light that the lamps give there is what arrives in a week. */
    double times(String enclosure, int week, Quantity quantity) {
        return at(enclosure, week)
                .filter(failure -> failure.kind().changesLight)
                .mapToDouble(failure -> failure.times(quantity))
                .reduce(1, (one, other) -> one * other);
    }

    /** How far readings of a week scatter besides what is usual, as a share. */
    double scatter(String enclosure, int week) {
        return at(enclosure, week)
                .filter(failure -> failure.kind() == Kind.OTHER_HEIGHT)
                .mapToDouble(Failure::uvIndexTimes)
                .sum();
    }

    /** Whether somebody reads there, or enters elsewhere what was read there. */
    boolean isRead(String enclosure, int week) {
        boolean isEnteredElsewhere = failures.stream()
                .anyMatch(failure -> failure.kind() == Kind.WRONG_ENCLOSURE
                        && failure.other().equals(enclosure)
                        && failure.isIn(week));
        return !isEnteredElsewhere && at(enclosure, week).noneMatch(failure -> failure.kind().leavesUnread);
    }

    /** By which other meter somebody else read there: every other week of its time. */
    Optional<Failure> otherMeter(String enclosure, int week) {
        return at(enclosure, week)
                .filter(failure -> failure.kind() == Kind.OTHER_METER && (week - failure.fromWeek()) % 2 == 0)
                .findFirst();
    }

    /** Whose readings were entered there by mistake. */
    Optional<String> neighbour(String enclosure, int week) {
        return at(enclosure, week)
                .filter(failure -> failure.kind() == Kind.WRONG_ENCLOSURE)
                .map(Failure::other)
                .findFirst();
    }

    Stream<Failure> of(Kind kind) {
        return failures.stream().filter(failure -> failure.kind() == kind);
    }

    private Stream<Failure> at(String enclosure, int week) {
        return failures.stream().filter(failure -> failure.enclosure().equals(enclosure) && failure.isIn(week));
    }

    /** What can go wrong. */
    enum Kind {
        SWAPPED_UNLOGGED(true, false),
        WRONG_GRADE(true, false),
        SHELF_RAISED(true, false),
        GLASS_CLOSED(true, false),
        MESH_CHANGED(true, false),
        REFLECTOR_TURNED(true, false),
        WARM_UP(true, false),
        NOT_BURNT_IN(true, false),
        OTHER_HEIGHT(false, false),
        OTHER_METER(false, false),
        NOT_READ(false, true),
        POWER_CUT(false, true),
        WRONG_ENCLOSURE(false, false);

        private final boolean changesLight;
        private final boolean leavesUnread;

        Kind(boolean changesLight, boolean leavesUnread) {
            this.changesLight = changesLight;
            this.leavesUnread = leavesUnread;
        }
    }

    /**
     * One of them.
     *
     * @param fromWeek of the story, counted from 1
     * @param toWeek the last one
     * @param uvIndexTimes what arrives over what would; of a point that is held elsewhere each time the scatter, as a share
     * @param other the meter that somebody else had, or the neighbour whose readings were entered there
     */
    record Failure(
            String enclosure,
            int fromWeek,
            int toWeek,
            Kind kind,
            double uvIndexTimes,
            double illuminanceTimes,
            String other,
            String what) {
        static Failure of(NamedCsvRecord row) {
            return new Failure(
                    row.getField("enclosure"),
                    Integer.parseInt(row.getField("from_week")),
                    Integer.parseInt(row.getField("to_week")),
                    Kind.valueOf(row.getField("kind")),
                    number(row, "uvi_times"),
                    number(row, "lux_times"),
                    row.getField("other"),
                    row.getField("what"));
        }

        boolean isIn(int week) {
            return week >= fromWeek && week <= toWeek;
        }

        private double times(Quantity quantity) {
            return quantity == Quantity.ILLUMINANCE ? illuminanceTimes : uvIndexTimes;
        }
    }
}
