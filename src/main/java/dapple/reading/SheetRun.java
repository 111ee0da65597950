package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** One import of readings: who does it, how far it is and what is left to do at its end. */
class SheetRun {
    private final Visitor by;
    private final UnaryOperator<Instant> recorded;
    private final Map<String, Long> people;
    private final SheetCount count = new SheetCount();
    private final Set<Read> touched = new LinkedHashSet<>();
    private Optional<Grounds> grounds = Optional.empty();
    private long enclosureId;

    /**
     * By somebody.
     *
     * @param recorded when what was taken at an instant is recorded
     * @param people by their names in small letters
     */
    SheetRun(Visitor by, UnaryOperator<Instant> recorded, Map<String, Long> people) {
        this.by = by;
        this.recorded = recorded;
        this.people = people;
    }

    long siteId() {
        return by.siteId();
    }

    Visitor by() {
        return by;
    }

    Instant recordedAt(Instant takenAt) {
        return recorded.apply(takenAt);
    }

    SheetCount count() {
        return count;
    }

    /** The person of a name that a sheet gives, if there is one here. */
    Optional<Long> person(SheetVisit visit) {
        return visit.takenBy().flatMap(name -> Optional.ofNullable(people.get(plain(name))));
    }

    static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** What readings in an enclosure are judged by: kept until the next enclosure begins. */
    Grounds grounds(long enclosure, GroundsKnown known) {
        Grounds found =
                grounds.filter(kept -> enclosureId == enclosure).orElseGet(() -> known.ofYears(by.siteId(), enclosure));
        grounds = Optional.of(found);
        enclosureId = enclosure;
        return found;
    }

    void touch(long pointId, Quantity quantity) {
        touched.add(new Read(by.siteId(), pointId, quantity));
    }

    /** The points and quantities of which there may be a newer reading now. */
    Set<Read> touched() {
        return touched;
    }
}
