package dapple.reading;

import dapple.reading.SheetsTaken.Differing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Counts what becomes of the readings of sheets. */
class SheetCount {
    /** How many readings that differ are named. */
    private static final int EXAMPLES = 1_000;

    private final List<Differing> examples = new ArrayList<>();
    private long visits;
    private long stored;
    private long known;
    private long differing;

    /** Whether a reading is new; from then on it is on record. */
    boolean isNew(SheetReading said, UUID key, OnRecord record) {
        Optional<Double> standing = record.amount(key);
        if (standing.isEmpty()) {
            stored++;
            record.addAmount(key, said.amount());
        } else if (standing.get() == said.amount()) {
            known++;
        } else {
            differs(said, standing.get());
        }
        return standing.isEmpty();
    }

    private void differs(SheetReading said, double standing) {
        differing++;
        if (examples.size() < EXAMPLES) {
            examples.add(new Differing(said, standing));
        }
    }

    void addVisits(long added) {
        visits += added;
    }

    SheetsTaken taken() {
        return new SheetsTaken(visits, stored, known, differing, List.copyOf(examples));
    }
}
