package dapple.reading;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Sorts readings by enclosure, time and who took them, so that those of a visit come together. What does not fit into
 * memory is sorted piece by piece into temporary files, which are merged while they are read.
 */
class SheetOrder implements AutoCloseable {
    private static final Comparator<SheetReading> ORDER = Comparator.comparingLong(SheetReading::enclosureId)
            .thenComparing(SheetReading::takenAt)
            .thenComparing(reading -> reading.takenBy().orElse(""))
            .thenComparing(SheetReading::dayOnly)
            .thenComparingLong(SheetReading::pointId)
            .thenComparingLong(SheetReading::meterId)
            .thenComparingDouble(SheetReading::amount);

    private final int inMemory;
    private final List<Path> pieces = new ArrayList<>();
    private final List<DataInputStream> open = new ArrayList<>();
    private List<SheetReading> held = new ArrayList<>();

    /** @param inMemory how many readings are held at a time */
    SheetOrder(int inMemory) {
        this.inMemory = inMemory;
    }

    /** @throws UncheckedIOException if the disk is full */
    void add(SheetReading reading) {
        held.add(reading);
        if (held.size() == inMemory) {
            try {
                putAside();
            } catch (IOException notWritten) {
                throw new UncheckedIOException(notWritten);
            }
        }
    }

    /** All of them in their order, once. */
    Iterator<SheetReading> sorted() {
        held.sort(ORDER);
        PriorityQueue<Piece> queue = new PriorityQueue<>(Comparator.comparing(Piece::head, ORDER));
        Piece.of(held.iterator()).ifPresent(queue::add);
        pieces.forEach(piece -> Piece.of(read(piece)).ifPresent(queue::add));
        return new Merged(queue);
    }

    private void putAside() throws IOException {
        held.sort(ORDER);
        Path piece = Files.createTempFile("dapple-readings", ".piece");
        pieces.add(piece);
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(piece)))) {
            for (SheetReading reading : held) {
                write(reading, out);
            }
        }
        held = new ArrayList<>();
    }

    private Iterator<SheetReading> read(Path piece) {
        try {
            DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(piece)));
            open.add(in);
            return new Stored(in);
        } catch (IOException notRead) {
            throw new UncheckedIOException(notRead);
        }
    }

    private static void write(SheetReading reading, DataOutputStream out) throws IOException {
        out.writeLong(reading.enclosureId());
        out.writeLong(reading.pointId());
        out.writeLong(reading.meterId());
        out.writeDouble(reading.amount());
        out.writeLong(ChronoUnit.MICROS.between(Instant.EPOCH, reading.takenAt()));
        out.writeBoolean(reading.dayOnly());
        out.writeBoolean(reading.takenBy().isPresent());
        out.writeUTF(reading.takenBy().orElse(""));
    }

    private static SheetReading next(long enclosureId, DataInputStream in) throws IOException {
        long pointId = in.readLong();
        long meterId = in.readLong();
        double amount = in.readDouble();
        Instant takenAt = Instant.EPOCH.plus(in.readLong(), ChronoUnit.MICROS);
        boolean dayOnly = in.readBoolean();
        boolean named = in.readBoolean();
        String name = in.readUTF();
        return new SheetReading(
                enclosureId, pointId, meterId, amount, takenAt, dayOnly, named ? Optional.of(name) : Optional.empty());
    }

    @Override
    public void close() {
        try {
            for (DataInputStream in : open) {
                in.close();
            }
            for (Path piece : pieces) {
                Files.deleteIfExists(piece);
            }
        } catch (IOException notDeleted) {
            throw new UncheckedIOException(notDeleted);
        }
    }

    /** What was put aside, as it is read back. */
    private static final class Stored implements Iterator<SheetReading> {
        private final DataInputStream in;
        private Optional<SheetReading> ahead;

        Stored(DataInputStream in) {
            this.in = in;
            this.ahead = fetch();
        }

        private Optional<SheetReading> fetch() {
            try {
                return Optional.of(SheetOrder.next(in.readLong(), in));
            } catch (EOFException end) {
                return Optional.empty();
            } catch (IOException notRead) {
                throw new UncheckedIOException(notRead);
            }
        }

        @Override
        public boolean hasNext() {
            return ahead.isPresent();
        }

        @Override
        public SheetReading next() {
            SheetReading next = ahead.orElseThrow(NoSuchElementException::new);
            ahead = fetch();
            return next;
        }
    }

    /** A sorted run of readings and the first that is left of it. */
    private record Piece(SheetReading head, Iterator<SheetReading> rest) {
        static Optional<Piece> of(Iterator<SheetReading> sorted) {
            return sorted.hasNext() ? Optional.of(new Piece(sorted.next(), sorted)) : Optional.empty();
        }
    }

    private record Merged(PriorityQueue<Piece> queue) implements Iterator<SheetReading> {
        @Override
        public boolean hasNext() {
            return !queue.isEmpty();
        }

        @Override
        public SheetReading next() {
            Piece first = Optional.ofNullable(queue.poll()).orElseThrow(NoSuchElementException::new);
            Piece.of(first.rest()).ifPresent(queue::add);
            return first.head();
        }
    }
}
