package dapple.importing;

import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.RowText;
import dapple.importing.sheet.Rows;
import dapple.importing.sheet.Subject;
import dapple.light.quantity.Quantity;
import dapple.reading.SheetReading;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.LongConsumer;

/** The readings of all sheets, one after the other, with the ids of what they are of; 0 for what is not stored yet. */
final class ReadingRows implements Iterator<SheetReading>, AutoCloseable {
    private static final long STEP = 2048;

    private final Checking checking;
    private final Instant now;
    private final BiConsumer<Origin, BadCellException> bad;
    private final LongConsumer progress;
    private final Iterator<Tables.One> tables;
    private final Deque<SheetReading> ready = new ArrayDeque<>();
    private Optional<Rows> rows = Optional.empty();
    private String sheet = "";
    private long count;

    /**
     * Begins at the first row.
     *
     * @param bad hears of rows whose things cannot be taken; of rows that cannot be read it has been told before
     */
    ReadingRows(
            Checking checking,
            List<Tables.One> tables,
            Instant now,
            BiConsumer<Origin, BadCellException> bad,
            LongConsumer progress) {
        this.checking = checking;
        this.tables = tables.iterator();
        this.now = now;
        this.bad = bad;
        this.progress = progress;
    }

    @Override
    public boolean hasNext() {
        while (ready.isEmpty()) {
            if (rows.isPresent() && rows.get().hasNext()) {
                take(rows.get().next());
            } else if (tables.hasNext()) {
                open(tables.next());
            } else {
                close();
                return false;
            }
        }
        return true;
    }

    @Override
    public SheetReading next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        return ready.remove();
    }

    private void open(Tables.One one) {
        close();
        sheet = one.table().label();
        rows = Optional.of(one.table().rows(one.sheet()));
    }

    @Override
    public void close() {
        rows.ifPresent(Rows::close);
        rows = Optional.empty();
    }

    private void take(RowText row) {
        if (++count % STEP == 0) {
            progress.accept(count);
        }
        List<SaidReading> said = readable(row);
        try {
            ready.addAll(said.stream().map(this::resolved).toList());
        } catch (BadCellException cannotBeTaken) {
            bad.accept(new Origin(sheet, row.line()), cannotBeTaken);
        }
    }

    private List<SaidReading> readable(RowText row) {
        try {
            return SheetGathering.read(row, checking, now).readings();
        } catch (BadCellException toldBefore) {
            return List.of();
        }
    }

    private SheetReading resolved(SaidReading said) {
        return new SheetReading(
                id(entry(Subject.ENCLOSURE, said.enclosure())),
                id(entry(Subject.POINT, said.point())),
                id(meter(said)),
                said.amount(),
                said.at(),
                said.dayOnly(),
                said.by());
    }

    private Entry meter(SaidReading said) {
        return said.meter()
                .flatMap(key -> checking.book().find(Subject.METER, key))
                .filter(entry ->
                        entry.fact(Field.METER_QUANTITY, Quantity.class).equals(Optional.of(said.quantity())))
                .orElseGet(() -> entry(Subject.METER, Keys.noMeter(said.quantity())));
    }

    private Entry entry(Subject subject, String key) {
        Optional<Entry> found = checking.book().find(subject, key);
        return found.filter(entry -> !entry.isLeftOut())
                .orElseThrow(() -> found.flatMap(Entry::whyLeftOut)
                        .orElseGet(() -> new BadCellException(
                                Reason.ENCLOSURE_LEFT_OUT, key.substring(key.lastIndexOf('\n') + 1))));
    }

    private static long id(Entry entry) {
        return entry.id().orElse(0);
    }
}
