package dapple.reading;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

/** Sorted readings of sheets as visits, some hundreds of one enclosure at a time. */
class SheetBatches implements Iterator<List<SheetVisit>> {
    private final Iterator<SheetReading> sorted;
    private final int visitsAtATime;
    private Optional<SheetReading> ahead;

    SheetBatches(Iterator<SheetReading> sorted, int visitsAtATime) {
        this.sorted = sorted;
        this.visitsAtATime = visitsAtATime;
        this.ahead = fetch();
    }

    private Optional<SheetReading> fetch() {
        return sorted.hasNext() ? Optional.of(sorted.next()) : Optional.empty();
    }

    @Override
    public boolean hasNext() {
        return ahead.isPresent();
    }

    @Override
    public List<SheetVisit> next() {
        long enclosure = ahead.orElseThrow(NoSuchElementException::new).enclosureId();
        List<SheetVisit> batch = new ArrayList<>();
        while (batch.size() < visitsAtATime
                && ahead.filter(next -> next.enclosureId() == enclosure).isPresent()) {
            batch.add(visit());
        }
        return batch;
    }

    private SheetVisit visit() {
        List<SheetReading> readings = new ArrayList<>();
        SheetVisit visit = SheetVisit.beginningWith(ahead.orElseThrow(), readings);
        while (ahead.filter(visit::includes).isPresent()) {
            ahead.ifPresent(readings::add);
            ahead = fetch();
        }
        return visit;
    }
}
