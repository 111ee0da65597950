package dapple.light.design;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** The mixes with the lowest keys. What is in it does not depend on the order in which they were offered. */
final class Shortlist {
    private static final int LONGEST = 16;

    private record Entry(double key, Mix mix) {}

    private final TreeSet<Entry> entries =
            new TreeSet<>(Comparator.comparingDouble(Entry::key).thenComparing(Entry::mix));

    /** Whether a key may still get in. */
    private boolean takes(double key) {
        return key < Double.POSITIVE_INFINITY
                && (entries.size() < LONGEST || key <= entries.last().key());
    }

    void offer(double key, int layering, int[] lamps, int size) {
        if (takes(key)) {
            offer(new Entry(key, Mix.of(layering, lamps, size)));
        }
    }

    private void offer(Entry entry) {
        entries.add(entry);
        if (entries.size() > LONGEST) {
            entries.pollLast();
        }
    }

    void addAll(Shortlist other) {
        other.entries.forEach(this::offer);
    }

    List<Mix> mixes() {
        return entries.stream().map(Entry::mix).toList();
    }
}
