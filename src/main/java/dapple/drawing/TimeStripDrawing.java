package dapple.drawing;

import dapple.drawing.StripHistory.Window;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Works out where everything of a time strip lies. */
final class TimeStripDrawing {
    private static final double TOP = 30;
    private static final double BOTTOM = 186;
    private static final double MONTHS_HEIGHT = 30;
    private static final double CLEAR_OF_DISC = 9;
    private static final double NARROWEST_GAP = 12;
    private static final double ROOM_OF_A_LABEL = 24;

    private final StripHistory history;
    private final StripSize size;
    private final LocalDate lastDay;
    private final Window window;
    private final TimeAxis time;
    private final ValueAxis values;
    private final Sampling sampling;

    TimeStripDrawing(StripHistory history, StripSize size, LocalDate lastDay) {
        this.history = history;
        this.size = size;
        this.lastDay = lastDay;
        this.window = history.window(size, lastDay);
        this.time = new TimeAxis(window.from(), window.until(), size.left(), size.right(), history.zone());
        this.sampling = Sampling.of(history, window, size.bins());
        this.values = ValueAxis.upTo(highest(), TOP, BOTTOM);
    }

    TimeStrip drawn() {
        EventMarks events = EventMarks.of(history.events(), window, time, size.edge(), BOTTOM + MONTHS_HEIGHT);
        return new TimeStrip(
                lastDay.plusDays(1).minusWeeks(size.weeks()),
                lastDay,
                frame(BOTTOM + MONTHS_HEIGHT + events.height()),
                targets().map(this::target).toList(),
                sampling.gaps().stream().flatMap(gap -> gap(gap).stream()).toList(),
                line(),
                sampling.runs().stream().flatMap(List::stream).map(this::disc).toList(),
                newest(),
                events.marks(),
                sampling.readings(),
                events.leftOut());
    }

    private StripFrame frame(double height) {
        return new StripFrame(
                size.width(), height, size.left(), size.right(), TOP, BOTTOM, values.ticks(), time.months());
    }

    private double highest() {
        DoubleStream readings = sampling.runs().stream()
                .flatMap(List::stream)
                .mapToDouble(reading -> reading.measured().interval().high());
        DoubleStream limits = targets()
                .flatMapToDouble(target ->
                        DoubleStream.of(target.ceiling(), target.band().high()));
        return DoubleStream.concat(readings, limits).max().orElse(0);
    }

    private Stream<StripTarget> targets() {
        return history.targets().stream()
                .filter(target -> target.from().isBefore(window.until())
                        && target.until().isAfter(window.from())
                        && target.from().isBefore(target.until()));
    }

    private TimeStrip.Target target(StripTarget target) {
        double x = time.x(target.from());
        double right = time.x(target.until());
        Band band = target.band();
        double y = values.y(band.high());
        double width = Rounded.of(right - x);
        String ceilingLabel = written(target.ceiling());
        return new TimeStrip.Target(
                x,
                y,
                width,
                Rounded.of(values.y(band.low()) - y),
                bars(target, x, right),
                path(
                        "M%1$.1f %3$.1fH%2$.1fM%1$.1f %4$.1fH%2$.1f",
                        x, right, ceilingY(target) - 2, ceilingY(target) + 2),
                ceilingY(target),
                width > Words.width("ceiling " + ceilingLabel) ? ceilingLabel : "",
                target.name(),
                Words.cut(target.name(), width - 6),
                labelY(target));
    }

    private double ceilingY(StripTarget target) {
        return values.y(target.ceiling());
    }

    private String bars(StripTarget target, double x, double right) {
        Band band = target.band();
        String low = band.low() > 0 ? path("M%.1f %.1fH%.1f", x, values.y(band.low()), right) : "";
        String high = band.high() < target.ceiling() ? path("M%.1f %.1fH%.1f", x, values.y(band.high()), right) : "";
        return low + high;
    }

    /** Above the band, or inside where the ceiling is near, or below where the band is narrow too. */
    private double labelY(StripTarget target) {
        double high = values.y(target.band().high());
        double low = values.y(target.band().low());
        if (high - ceilingY(target) >= ROOM_OF_A_LABEL) {
            return high - 7;
        }
        return low - high >= ROOM_OF_A_LABEL ? high + 18 : low + 18;
    }

    private Optional<TimeStrip.Gap> gap(Sampling.Gap gap) {
        double x = time.x(gap.from()) + (gap.from().equals(window.from()) ? 0 : CLEAR_OF_DISC);
        double right = time.x(gap.until()) - (gap.until().equals(window.until()) ? 0 : CLEAR_OF_DISC);
        double width = Rounded.of(right - x);
        return width < NARROWEST_GAP
                ? Optional.empty()
                : Optional.of(new TimeStrip.Gap(Rounded.of(x), width, size.hasRoomForWords(width)));
    }

    private String line() {
        StringBuilder line = new StringBuilder();
        for (List<StripReading> run : sampling.runs()) {
            for (int i = 0; i < run.size() && run.size() > 1; i++) {
                StripReading reading = run.get(i);
                line.append(i == 0 ? 'M' : 'L')
                        .append(path(
                                "%.1f %.1f",
                                time.x(reading.at()),
                                values.y(reading.measured().amount())));
            }
        }
        return line.toString();
    }

    private TimeStrip.Disc disc(StripReading reading) {
        double x = time.x(reading.at());
        return new TimeStrip.Disc(
                x,
                values.y(reading.measured().amount()),
                path(
                        "M%.1f %.1fV%.1f",
                        x,
                        values.y(reading.measured().interval().high()),
                        values.y(reading.measured().interval().low())),
                reading.state(),
                reading.words());
    }

    private Optional<TimeStrip.Newest> newest() {
        return history.readings().stream()
                .filter(reading -> window.contains(reading.at()))
                .reduce((earlier, later) -> later)
                .map(this::newest);
    }

    private TimeStrip.Newest newest(StripReading reading) {
        String amount = written(reading.measured().amount());
        double x = time.x(reading.at()) + CLEAR_OF_DISC;
        double y = values.y(reading.measured().amount());
        return x + Words.width(amount) <= size.edge()
                ? new TimeStrip.Newest(x, y + 5, "start", amount, reading.state())
                : new TimeStrip.Newest(size.edge(), y - 12, "end", amount, reading.state());
    }

    /** A UV index with one decimal, or two where it is a limit that has them; anything else whole from 10. */
    private String written(double amount) {
        boolean isUvIndex = history.quantity() == Quantity.UV_INDEX;
        int decimals = isUvIndex ? 1 : amount < 10 ? 1 : 0;
        boolean needsTwo = isUvIndex && Math.abs(amount * 10 - Math.rint(amount * 10)) > 1e-9;
        return String.format(Locale.ROOT, "%,." + (needsTwo ? 2 : decimals) + "f", amount);
    }

    private static String path(String format, Object... numbers) {
        return String.format(Locale.ROOT, format, numbers);
    }
}
