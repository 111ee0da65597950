package dapple.drawing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/** Where the lanes of a strip lie, each with its entries in as many rows as keep them apart. */
record LaneRows(List<DoseStrip.LaneRow> rows, double bottom) {
    private static final double NAME = 18;
    private static final double ROW = 28;
    private static final double AFTER = 8;
    private static final double INSET = 6;
    private static final double THINNEST = 4;
    private static final double BETWEEN = 2;
    private static final int MOST_ROWS = 4;
    private static final int MOST_ENTRIES = 60;

    static LaneRows of(List<Lane> lanes, TimeAxis time, double edge, double top) {
        List<DoseStrip.LaneRow> drawn = new ArrayList<>();
        double y = top;
        for (Lane lane : lanes) {
            Rows rows = new Rows(MOST_ROWS);
            List<DoseStrip.Entry> entries = new ArrayList<>();
            for (Lane.Entry entry : shown(lane, time)) {
                entries.add(entry(entry, time, edge, y + NAME, rows));
            }
            drawn.add(new DoseStrip.LaneRow(lane.name(), y + NAME - INSET, List.copyOf(entries)));
            y += NAME + Math.max(1, rows.used()) * ROW + AFTER;
        }
        return new LaneRows(List.copyOf(drawn), y);
    }

    /** What lies in the drawing; the newest, where there is very much. */
    private static List<Lane.Entry> shown(Lane lane, TimeAxis time) {
        LocalDate first = LocalDate.ofInstant(time.from(), time.zone());
        LocalDate end = LocalDate.ofInstant(time.until(), time.zone());
        List<Lane.Entry> shown = lane.entries().stream()
                .filter(entry -> entry.from().isBefore(end) && !entry.until().isBefore(first))
                .sorted(Comparator.comparing(Lane.Entry::from))
                .toList();
        return shown.subList(Math.max(0, shown.size() - MOST_ENTRIES), shown.size());
    }

    private static DoseStrip.Entry entry(Lane.Entry entry, TimeAxis time, double edge, double top, Rows rows) {
        LocalDate end = LocalDate.ofInstant(time.until(), time.zone());
        double x = time.x(entry.from());
        double right = Math.max(x + THINNEST, time.x(entry.until().isBefore(end) ? entry.until() : end));
        double width = right - x;
        double wanted = Words.width(entry.words()) + 2 * INSET;
        if (width >= wanted || width >= edge / 4) {
            OptionalInt row = rows.place(x, right - Rows.APART);
            String label = Words.cut(entry.words(), width - 2 * INSET);
            return placed(entry, x, width - BETWEEN, new Label(x + INSET, "start", label), top, row);
        }
        return beside(entry, x, right, edge, top, rows);
    }

    /** Words that have no room in their bar stand after it, or before it at the end of the drawing. */
    private static DoseStrip.Entry beside(
            Lane.Entry entry, double x, double right, double edge, double top, Rows rows) {
        double words = Words.width(entry.words()) + INSET;
        boolean isAfter = right + words <= edge || edge - right >= x;
        String label = Words.cut(entry.words(), isAfter ? edge - right - INSET : x - INSET);
        double width = Words.width(label) + INSET;
        OptionalInt row = isAfter ? rows.place(x, right + width) : rows.place(x - width, right);
        Label placed = isAfter ? new Label(right + INSET, "start", label) : new Label(x - INSET, "end", label);
        return placed(entry, x, right - x, placed, top, row);
    }

    private static DoseStrip.Entry placed(
            Lane.Entry entry, double x, double width, Label label, double top, OptionalInt row) {
        return new DoseStrip.Entry(
                x,
                top + ROW * row.orElse(0),
                Rounded.of(width),
                Rounded.of(label.x()),
                label.anchor(),
                row.isPresent() ? label.words() : "",
                entry.words());
    }

    private record Label(double x, String anchor, String words) {}
}
