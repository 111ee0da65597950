package dapple.drawing;

import dapple.drawing.DoseWeek.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Works out where everything of a dose strip lies. */
final class DoseStripDrawing {
    private static final double TOP = 30;
    private static final double BOTTOM = 232;
    private static final double MONTHS_HEIGHT = 34;
    private static final double SHARE_OF_A_WEEK = 0.6;
    private static final double NOTCH_BEYOND = 2.5;
    private static final double THINNEST = 2;

    private final DoseHistory history;
    private final StripSize size;
    private final LocalDate from;
    private final List<Kind> kinds;
    private final List<DoseWeek> known;
    private final TimeAxis time;
    private final ValueAxis values;

    DoseStripDrawing(DoseHistory history, StripSize size, LocalDate from, int weeks) {
        this.history = history;
        this.size = size;
        this.from = from;
        LocalDate until = from.plusWeeks(weeks);
        Map<LocalDate, DoseWeek> given =
                history.weeks(from, until).stream().collect(Collectors.toMap(DoseWeek::from, Function.identity()));
        this.kinds = IntStream.range(0, weeks)
                .mapToObj(week -> kind(given, from.plusWeeks(week)))
                .toList();
        this.known = IntStream.range(0, weeks)
                .mapToObj(from::plusWeeks)
                .flatMap(week -> Optional.ofNullable(given.get(week)).stream())
                .filter(week -> week.kind() == Kind.MEASURED || week.kind() == Kind.CARRIED)
                .toList();
        this.time = TimeAxis.of(from, until, size, history.zone());
        this.values = ValueAxis.upTo(
                known.stream().mapToDouble(DoseWeek::highestUviHours).max().orElse(0), TOP, BOTTOM);
    }

    DoseStrip drawn() {
        LaneRows lanes = LaneRows.of(history.lanes(), time, size.edge(), BOTTOM + MONTHS_HEIGHT);
        return new DoseStrip(
                from,
                from.plusWeeks(kinds.size()).minusDays(1),
                new StripFrame(
                        size.width(),
                        lanes.bottom(),
                        size.left(),
                        size.right(),
                        TOP,
                        BOTTOM,
                        values.ticks(),
                        time.months()),
                known.stream().map(this::bar).toList(),
                boxes(Kind.UNKNOWN),
                boxes(Kind.PLANNED_OFF),
                lanes.rows());
    }

    private static Kind kind(Map<LocalDate, DoseWeek> given, LocalDate week) {
        DoseWeek there = given.get(week);
        return there == null ? Kind.UNKNOWN : there.kind();
    }

    private DoseStrip.Bar bar(DoseWeek week) {
        double left = time.x(week.from());
        double whole = time.x(week.from().plusWeeks(1)) - left;
        double width = Rounded.of(whole * SHARE_OF_A_WEEK);
        double x = Rounded.of(left + (whole - width) / 2);
        double low = values.y(week.lowestUviHours());
        double height = Math.max(THINNEST, Rounded.of(low - values.y(week.highestUviHours())));
        String notch = String.format(
                Locale.ROOT,
                "M%.1f %.1fh%.1f",
                x - NOTCH_BEYOND,
                values.y(week.bestUviHours()),
                width + 2 * NOTCH_BEYOND);
        return new DoseStrip.Bar(
                x,
                Rounded.of(low - height),
                width,
                height,
                notch,
                week.kind() == Kind.CARRIED,
                week.isPartlyUnknown(),
                week.words());
    }

    private List<DoseStrip.Box> boxes(Kind kind) {
        List<DoseStrip.Box> boxes = new ArrayList<>();
        int first = 0;
        for (int week = 0; week <= kinds.size(); week++) {
            if (week == kinds.size() || kinds.get(week) != kind) {
                if (week > first) {
                    boxes.add(box(first, week));
                }
                first = week + 1;
            }
        }
        return boxes;
    }

    private DoseStrip.Box box(int first, int until) {
        double x = time.x(from.plusWeeks(first)) + 1;
        double width = Rounded.of(time.x(from.plusWeeks(until)) - 1 - x);
        return new DoseStrip.Box(Rounded.of(x), width, until - first, size.hasRoomForWords(width));
    }
}
