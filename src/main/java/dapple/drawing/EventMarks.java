package dapple.drawing;

import dapple.drawing.StripHistory.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Where the events of a strip lie, with their words below in rows; the newest, where there are very many. */
record EventMarks(List<TimeStrip.Event> marks, double height, int leftOut) {
    private static final int MOST = 40;
    private static final int MOST_ROWS = 4;
    private static final double ROW = 20;
    private static final double CLEAR_OF_LINE = 6;

    static EventMarks of(List<StripEvent> events, Window window, TimeAxis time, double edge, double top) {
        List<StripEvent> drawn =
                events.stream().filter(event -> window.contains(event.at())).toList();
        int leftOut = Math.max(0, drawn.size() - MOST);
        Rows rows = new Rows(MOST_ROWS);
        List<TimeStrip.Event> marks = new ArrayList<>();
        for (int i = leftOut; i < drawn.size(); i++) {
            double next = i + 1 < drawn.size() ? time.x(drawn.get(i + 1).at()) : edge;
            marks.add(mark(drawn.get(i), time.x(drawn.get(i).at()), new Room(next, edge), rows, top));
        }
        return new EventMarks(List.copyOf(marks), rows.used() * ROW + CLEAR_OF_LINE, leftOut);
    }

    /** To the right of its line; to the left where the words would reach the next line, or the end. */
    private static TimeStrip.Event mark(StripEvent event, double x, Room room, Rows rows, double top) {
        double wanted = Words.width(event.words()) + CLEAR_OF_LINE;
        boolean isRight = room.next() - x >= wanted || (x < wanted && room.edge() - x >= x);
        String label = Words.cut(event.words(), (isRight ? room.edge() - x : x) - CLEAR_OF_LINE);
        double width = Words.width(label) + CLEAR_OF_LINE;
        OptionalInt row = isRight ? rows.place(x, x + width) : rows.place(x - width, x);
        return new TimeStrip.Event(
                x,
                isRight ? x + CLEAR_OF_LINE : x - CLEAR_OF_LINE,
                top + ROW * row.orElse(0) + 14,
                isRight ? "start" : "end",
                row.isPresent() ? label : "",
                event.words());
    }

    /** Where the next line is, and where the drawing ends. */
    private record Room(double next, double edge) {}
}
