package dapple.drawing;

import static dapple.drawing.Samples.TODAY;
import static dapple.drawing.Samples.daysAgo;
import static dapple.drawing.Samples.reading;
import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.judging.Band;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TimeStripTest {
    private static final int MANY = 20_000;

    @ParameterizedTest
    @EnumSource(StripSize.class)
    void anyNumberOfReadingsIsAtMostTwoHundredDiscs(StripSize size) {
        assertThat(TimeStrip.of(many(1), size, TODAY).discs()).hasSizeBetween(40, 200);
    }

    @ParameterizedTest
    @EnumSource(StripSize.class)
    void aThinnedStripSaysOfHowManyReadingsItIs(StripSize size) {
        TimeStrip strip = TimeStrip.of(many(1), size, TODAY);

        assertThat(strip.isThinned()).isTrue();
        assertThat(strip.readings()).isGreaterThan(strip.discs().size());
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5"})
    void theLowestAndTheHighestReadingAreNeverLeftOut(long seed) {
        List<Double> drawn = heights(TimeStrip.of(many(seed), StripSize.LONG, TODAY));
        List<Double> all = heights(many(seed));

        assertThat(List.of(Collections.min(drawn), Collections.max(drawn)))
                .containsExactly(Collections.min(all), Collections.max(all));
    }

    @Test
    void anEventAfterEveryReadingDoesNotMakeItLarger() {
        StripHistory many = many(1);
        List<StripEvent> events = many.readings().stream()
                .map(one -> new StripEvent(one.at(), "new tube"))
                .toList();
        StripHistory restless = new StripHistory(
                Quantity.UV_INDEX, Samples.LONDON, many.readings().subList(0, 2000), List.of(), events);

        TimeStrip strip = TimeStrip.of(restless, StripSize.LONG, TODAY);

        assertThat(strip.events()).hasSize(40);
        assertThat(strip.discs()).hasSizeLessThanOrEqualTo(200);
    }

    @Test
    void aFewReadingsAreAllDrawn() {
        TimeStrip strip = TimeStrip.of(Samples.basking(), StripSize.LONG, TODAY);

        assertThat(strip.discs()).hasSize(strip.readings());
    }

    @ParameterizedTest
    @CsvSource({"14, 1", "15, 0"})
    void aLineJoinsReadingsAtMostFourteenDaysApart(int apartDays, int lines) {
        TimeStrip strip = TimeStrip.of(Samples.of(reading(40, 2), reading(40 - apartDays, 2)), StripSize.LONG, TODAY);

        assertThat(strip.line().chars().filter(letter -> letter == 'L')).hasSize(lines);
    }

    @ParameterizedTest
    @CsvSource({"21, 1", "20, 0", "17, 0", "13, 0", "12, 1"})
    void noLineCrossesAnEvent(int eventDaysAgo, int lines) {
        // read 20 and 13 days ago; what happens in the moment of a reading comes before it
        StripHistory history = new StripHistory(
                Quantity.UV_INDEX,
                Samples.LONDON,
                List.of(reading(20, 2), reading(13, 2)),
                List.of(),
                List.of(new StripEvent(
                        eventDaysAgo == 20 ? daysAgo(20).plusSeconds(1) : daysAgo(eventDaysAgo), "new tube")));

        assertThat(TimeStrip.of(history, StripSize.LONG, TODAY).line().chars().filter(letter -> letter == 'L'))
                .hasSize(lines);
    }

    @Test
    void moreThanFourteenDaysWithoutAReadingAreABox() {
        TimeStrip strip = TimeStrip.of(
                Samples.of(reading(181, 2), reading(170, 2), reading(155, 2), reading(141, 2), reading(10, 2)),
                StripSize.LONG,
                TODAY);

        assertThat(strip.gaps()).hasSize(2);
    }

    @Test
    void aGapThatLastsReachesTheEnd() {
        TimeStrip strip = TimeStrip.of(Samples.of(reading(30, 2)), StripSize.SHORT, TODAY);

        TimeStrip.Gap last = strip.gaps().get(strip.gaps().size() - 1);
        assertThat(last.x() + last.width()).isEqualTo(strip.frame().right());
    }

    @Test
    void aReadingJustBeforeTheDrawingClosesItsBeginning() {
        TimeStrip strip = TimeStrip.of(Samples.of(reading(185, 2), reading(176, 2)), StripSize.LONG, TODAY);

        assertThat(strip.gaps()).hasSize(1);
    }

    @Test
    void withoutAnyReadingAllIsAGap() {
        TimeStrip strip = TimeStrip.of(Samples.of(), StripSize.SHORT, TODAY);

        assertThat(strip.gaps())
                .containsExactly(new TimeStrip.Gap(
                        strip.frame().left(),
                        strip.frame().right() - strip.frame().left(),
                        true));
    }

    @Test
    void theTargetStepsWhereItsVersionChanges() {
        List<TimeStrip.Target> targets =
                TimeStrip.of(Samples.basking(), StripSize.LONG, TODAY).targets();

        assertThat(targets).extracting(TimeStrip.Target::name).containsExactly("target 2", "target 3");
        assertThat(targets.get(0).right()).isEqualTo(targets.get(1).x());
    }

    @Test
    void limitsAreHigherWhereTheyAreLarger() {
        List<TimeStrip.Target> targets =
                TimeStrip.of(Samples.basking(), StripSize.LONG, TODAY).targets();

        assertThat(targets.get(1).y()).isLessThan(targets.get(0).y());
    }

    @Test
    void aTargetThatHeldBeforeIsNotDrawn() {
        StripTarget before = Samples.target(400, daysAgo(300), new Band(1, 2), "1");
        StripHistory history =
                new StripHistory(Quantity.UV_INDEX, Samples.LONDON, List.of(), List.of(before), List.of());

        assertThat(TimeStrip.of(history, StripSize.LONG, TODAY).targets()).isEmpty();
    }

    @Test
    void theScaleReachesTheEndOfTheHighestInterval() {
        // 20 UVI, up to 24
        StripReading highest = reading(daysAgo(1), 20, State.OVER_CEILING);
        TimeStrip strip = TimeStrip.of(Samples.of(highest), StripSize.SHORT, TODAY);

        assertThat(strip.frame().values().get(strip.frame().values().size() - 1).label())
                .isEqualTo("25");
    }

    @ParameterizedTest
    @EnumSource(StripSize.class)
    void everythingLiesInTheDrawing(StripSize size) {
        TimeStrip strip = TimeStrip.of(Samples.basking(), size, TODAY);
        Stream<Double> across = Stream.concat(
                strip.discs().stream().map(TimeStrip.Disc::x),
                strip.events().stream().flatMap(event -> Stream.of(event.labelX(), end(event))));
        Stream<Double> down = Stream.concat(
                strip.discs().stream().map(TimeStrip.Disc::y),
                strip.events().stream().map(TimeStrip.Event::labelY));

        assertThat(across).allMatch(x -> x >= 0 && x <= size.width());
        assertThat(down).allMatch(y -> y > 0 && y < strip.frame().height());
    }

    @Test
    void theNewestReadingIsNeverLeftOut() {
        StripHistory history = Samples.illuminance();
        StripReading newest = history.readings().get(history.readings().size() - 1);

        assertThat(TimeStrip.of(history, StripSize.LONG, TODAY).discs())
                .extracting(TimeStrip.Disc::words)
                .endsWith(newest.words());
    }

    @Test
    void theNewestAmountStandsAtItsDisc() {
        TimeStrip strip = TimeStrip.of(Samples.basking(), StripSize.LONG, TODAY);

        assertThat(strip.newest()).map(TimeStrip.Newest::amount).contains("1.7");
    }

    @Test
    void wordsOfEventsDoNotOverlap() {
        List<StripEvent> events = IntStream.range(0, 6)
                .mapToObj(i -> new StripEvent(daysAgo(100 - i), "new tube L-10" + i))
                .toList();
        StripHistory history = new StripHistory(Quantity.UV_INDEX, Samples.LONDON, List.of(), List.of(), events);

        List<TimeStrip.Event> drawn =
                TimeStrip.of(history, StripSize.LONG, TODAY).events();

        List<TimeStrip.Event> labelled =
                drawn.stream().filter(event -> !event.label().isEmpty()).toList();
        assertThat(labelled).hasSizeGreaterThanOrEqualTo(4);
        assertThat(labelled)
                .allMatch(one -> labelled.stream()
                        .filter(other -> !other.equals(one) && other.labelY() == one.labelY())
                        .allMatch(other -> Math.max(other.labelX(), end(other)) < Math.min(one.labelX(), end(one))
                                || Math.max(one.labelX(), end(one)) < Math.min(other.labelX(), end(other))));
    }

    private static double end(TimeStrip.Event event) {
        double width = Words.width(event.label());
        return event.anchor().equals("start") ? event.labelX() + width : event.labelX() - width;
    }

    private static StripHistory many(long seed) {
        Random chance = new Random(seed);
        List<StripReading> readings = new ArrayList<>();
        Instant last = daysAgo(0);
        for (int i = 0; i < MANY; i++) {
            readings.add(
                    reading(last.minusSeconds(chance.nextInt(180 * 86_400)), chance.nextDouble() * 8, State.ON_TARGET));
        }
        return Samples.of(readings.toArray(StripReading[]::new));
    }

    private static List<Double> heights(TimeStrip strip) {
        return strip.discs().stream().map(TimeStrip.Disc::y).toList();
    }

    /** As they would be drawn, had they room. */
    private static List<Double> heights(StripHistory history) {
        ValueAxis values = ValueAxis.upTo(
                history.readings().stream()
                        .mapToDouble(one -> one.measured().interval().high())
                        .max()
                        .orElseThrow(),
                30,
                186);
        return history.readings().stream()
                .map(one -> values.y(one.measured().amount()))
                .toList();
    }
}
