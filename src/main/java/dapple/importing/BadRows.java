package dapple.importing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The bad rows of a sheet of which the same is to be said. */
record BadRows(BadRow first, List<Lines> lines) {
    /** Lines that follow one another, both ends included. */
    record Lines(long from, long to) {}

    /** Folds rows; the order is that of the first of each. */
    static List<BadRows> of(List<BadRow> rows) {
        Map<BadRow, List<BadRow>> same =
                rows.stream().collect(Collectors.groupingBy(BadRows::anyLine, LinkedHashMap::new, Collectors.toList()));
        return same.values().stream()
                .map(all -> new BadRows(all.get(0), lines(all)))
                .toList();
    }

    private static BadRow anyLine(BadRow row) {
        return new BadRow(row.sheet(), 0, row.column(), row.reason(), row.text());
    }

    private static List<Lines> lines(List<BadRow> rows) {
        SortedSet<Long> all = rows.stream().map(BadRow::line).collect(Collectors.toCollection(TreeSet::new));
        List<Lines> lines = new ArrayList<>();
        for (long line : all) {
            int last = lines.size() - 1;
            if (last >= 0 && lines.get(last).to() + 1 == line) {
                lines.set(last, new Lines(lines.get(last).from(), line));
            } else {
                lines.add(new Lines(line, line));
            }
        }
        return lines;
    }
}
