package dapple.importing;

import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.RowText;
import dapple.importing.sheet.Subject;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.species.Library;
import java.time.Clock;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Reads all sheets of a file for the things that they speak of, and holds these against the record. */
@Component
class SheetGathering {
    private static final long STEP = 2048;

    private final SiteRecord record;
    private final People people;
    private final Library library;
    private final MessageSource messages;
    private final Clock clock;

    SheetGathering(SiteRecord record, People people, Library library, MessageSource messages, Clock clock) {
        this.record = record;
        this.people = people;
        this.library = library;
        this.messages = messages;
        this.clock = clock;
    }

    /**
     * What the sheets say, checked: entries that are on record have their ids, those that cannot be taken are left out.
     *
     * @param progress hears the number of rows now and then
     */
    Checking gather(SignedIn me, Tables tables, Choices choices, LongConsumer progress) {
        Outcome outcome = new Outcome();
        Checking checking = new Checking(me, new Book(outcome), record.at(me.siteId()), outcome, choices);
        Pass pass = new Pass(checking, clock.instant(), progress);
        for (Tables.One one : tables.all()) {
            one.table().each(one.sheet(), row -> pass.take(row, one.table().label()));
        }
        String unsaid = messages.getMessage("import.room.unsaid", new Object[0], Locale.UK);
        new PlaceChecks(checking, unsaid).check();
        new SpeciesChecks(checking, library).check();
        new StockChecks(checking, people).check();
        new AnimalChecks(checking).check();
        new RigChecks(checking).check();
        return checking;
    }

    /** What a row says; meters are those of the record and those of which the sheets have said what they measure. */
    static RowSaid read(RowText row, Checking checking, Instant now) {
        return RowReading.read(row, checking.me().zone(), now, key -> quantity(checking, key));
    }

    private static Optional<Quantity> quantity(Checking checking, String meter) {
        return Known.in(checking.known().meters(), meter)
                .map(MeterFacts::quantity)
                .or(() -> checking.book()
                        .find(Subject.METER, meter)
                        .flatMap(entry -> entry.fact(Field.METER_QUANTITY, Quantity.class)));
    }

    /** One reading of all rows. */
    private static final class Pass {
        private final Checking checking;
        private final Instant now;
        private final LongConsumer progress;
        private long rows;

        Pass(Checking checking, Instant now, LongConsumer progress) {
            this.checking = checking;
            this.now = now;
            this.progress = progress;
        }

        void take(RowText row, String sheet) {
            Origin origin = new Origin(sheet, row.line());
            try {
                RowSaid said = read(row, checking, now);
                said.things().forEach(thing -> checking.book().add(thing, origin));
                said.readings().forEach(reading -> notice(reading, origin));
                if (speciesAlone(said)) {
                    checking.outcome().notice(Notice.Kind.SPECIES_WITHOUT_ANIMAL, "", origin);
                }
            } catch (BadCellException bad) {
                checking.outcome().bad(origin, bad);
            }
            if (++rows % STEP == 0) {
                progress.accept(rows);
            }
        }

        private void notice(SaidReading reading, Origin origin) {
            reading.by()
                    .filter(name -> !checking.known().readers().contains(Keys.of(name)))
                    .ifPresent(name -> checking.outcome().notice(Notice.Kind.PERSON_UNKNOWN, name, origin));
            if (reading.dayOnly()) {
                checking.outcome().countDayOnly();
            }
        }

        private static boolean speciesAlone(RowSaid said) {
            return said.things().stream().anyMatch(one -> one.subject() == Subject.SPECIES)
                    && said.things().stream().anyMatch(one -> one.subject() == Subject.ENCLOSURE)
                    && said.things().stream().noneMatch(one -> one.subject() == Subject.ANIMAL);
        }
    }
}
