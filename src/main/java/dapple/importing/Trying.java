package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Subject;
import dapple.people.SignedIn;
import dapple.reading.ReadingIntake;
import dapple.reading.SheetReading;
import dapple.reading.SheetsTaken;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.stream.StreamSupport;
import org.springframework.stereotype.Component;

/** Finds out what an import would do, and does none of it. */
@Component
class Trying {
    private static final int NAMES = 20;

    private final SheetGathering gathering;
    private final ReadingIntake intake;
    private final Clock clock;

    Trying(SheetGathering gathering, ReadingIntake intake, Clock clock) {
        this.gathering = gathering;
        this.intake = intake;
        this.clock = clock;
    }

    Tried attempt(SignedIn me, Tables tables, Run run, DoubleConsumer progress) {
        double rows = Math.max(1, run.rows());
        Checking checking =
                gathering.gather(me, tables, run.choices(), done -> progress.accept(Math.min(1, done / rows) / 2));
        Readings readings = new Readings();
        SheetsTaken looked;
        try (ReadingRows found = new ReadingRows(
                checking,
                tables.all(),
                clock.instant(),
                checking.outcome()::bad,
                done -> progress.accept(0.5 + Math.min(1, done / rows) / 2))) {
            looked = intake.look(me.siteId(), readings.ofStoredThings(found));
        }
        Outcome outcome = checking.outcome();
        return new Tried(
                created(checking.book()),
                readings.count,
                looked.known(),
                looked.differing(),
                readings.first,
                readings.last,
                outcome.bad(),
                outcome.badRows(),
                outcome.notices(),
                outcome.noticesNotListed(),
                outcome.dayOnly());
    }

    static List<Tried.Created> created(Book book) {
        List<Tried.Created> created = new ArrayList<>();
        Arrays.stream(Subject.values()).forEach(subject -> {
            Collection<Entry> all = book.all(subject);
            List<Entry> fresh = book.fresh(subject);
            long known = all.stream().filter(Entry::isKnown).count();
            if (!fresh.isEmpty() || known > 0) {
                List<String> names = fresh.stream()
                        .limit(NAMES)
                        .map(entry -> name(book, entry))
                        .toList();
                created.add(new Tried.Created(subject, fresh.size(), known, names));
            }
        });
        return created;
    }

    private static String name(Book book, Entry entry) {
        if (entry.subject() != Subject.POINT) {
            return entry.name();
        }
        return entry.text(Field.ENCLOSURE_CODE)
                        .flatMap(key -> book.find(Subject.ENCLOSURE, key))
                        .map(Entry::name)
                        .orElse("")
                + " " + entry.text(Field.POINT_CODE).orElse(entry.name());
    }

    /** How many readings there are, and over which time. */
    private static final class Readings {
        private static final long UNSTORED = 0;

        private long count;
        private Optional<Instant> first = Optional.empty();
        private Optional<Instant> last = Optional.empty();

        /** Those whose point and meter are stored: only they may be on record. All are counted on the way. */
        Iterator<SheetReading> ofStoredThings(Iterator<SheetReading> found) {
            Iterable<SheetReading> all = () -> found;
            return StreamSupport.stream(all.spliterator(), false)
                    .peek(reading -> add(reading.takenAt()))
                    .filter(reading -> reading.enclosureId() != UNSTORED
                            && reading.pointId() != UNSTORED
                            && reading.meterId() != UNSTORED)
                    .iterator();
        }

        private void add(Instant at) {
            count++;
            first = first.filter(before -> !at.isBefore(before)).or(() -> Optional.of(at));
            last = last.filter(after -> !at.isAfter(after)).or(() -> Optional.of(at));
        }
    }
}
