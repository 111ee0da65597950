package dapple.exposure;

import dapple.animal.StayFacts;
import dapple.light.dose.DayJudgement;
import dapple.light.dose.DayOfLight;
import dapple.light.dose.Span;
import dapple.light.judging.PointRole;
import dapple.reading.JudgedReading;
import dapple.rig.FittedLamp;
import dapple.site.Settings;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What light an animal had over a period, day by day, and what that rests on. */
public record Exposure(Period period, ZoneId zone, Settings settings, Lived lived, List<DayOfLight> days) {
    private static final int RECENT_DAYS = 28;

    public Sum sum() {
        return Sum.of(days);
    }

    /** The last days of the period. */
    public List<DayOfLight> recentDays() {
        return days.subList(Math.max(0, days.size() - RECENT_DAYS), days.size());
    }

    public Sum recent() {
        return Sum.of(recentDays());
    }

    public DayOfLight lastDay() {
        return days.get(days.size() - 1);
    }

    /** Readings taken in the period, of every quantity, newest first. */
    public List<JudgedReading> readings() {
        Span during = period.span(zone);
        return lived.readings().stream()
                .filter(reading -> during.contains(reading.takenAt()))
                .toList();
    }

    /** The newest reading of the UV index at a basking point where it lived last. */
    public Optional<JudgedReading> newestBasking() {
        return lastStay().stream()
                .flatMap(stay -> readings().stream()
                        .filter(reading ->
                                reading.enclosureId() == stay.enclosureId() && stay.holds(reading.takenAt())))
                .filter(lived::counts)
                .filter(reading -> lived.point(reading).role() == PointRole.BASKING)
                .findFirst();
    }

    /** How many days were found to be what; what no day was is missing. */
    public Map<DayJudgement, Long> judgements() {
        return days.stream()
                .collect(Collectors.groupingBy(
                        DayOfLight::judgement, () -> new EnumMap<>(DayJudgement.class), Collectors.counting()));
    }

    public List<Gap> gaps() {
        return Gap.in(days);
    }

    /** So many of the longest, oldest first. */
    public List<Gap> longestGaps(int most) {
        return gaps().stream()
                .sorted(Comparator.comparingInt((Gap gap) -> -gap.days().days()))
                .limit(most)
                .sorted(Comparator.comparing(gap -> gap.days().from()))
                .toList();
    }

    /** Newest first. */
    public Map<YearMonth, List<DayOfLight>> months() {
        Map<YearMonth, List<DayOfLight>> months = new LinkedHashMap<>();
        for (int i = days.size() - 1; i >= 0; i--) {
            months.computeIfAbsent(YearMonth.from(days.get(i).date()), month -> new ArrayList<>())
                    .add(days.get(i));
        }
        return months;
    }

    /** The changes of rigs in the period while the animal was there, oldest first. */
    public List<RigEvent> rigEvents() {
        Span during = period.span(zone);
        return lived.changes().stream()
                .filter(change -> during.contains(change.at()))
                .filter(change -> lived.stays().stream()
                        .anyMatch(stay -> stay.enclosureId() == change.enclosureId() && stay.holds(change.at())))
                .map(change -> RigEvent.of(change, lived.lamps()))
                .toList();
    }

    /** The ultraviolet lamps at the end of the period where it lived then. */
    public List<FittedLamp> lastLamps() {
        Instant end = period.span(zone).to();
        return lastStay().stream()
                .flatMap(stay -> lived.lamps().stream().filter(lamp -> lamp.enclosureId() == stay.enclosureId()))
                .filter(lamp -> lamp.lampClass().emitsUltraviolet())
                .filter(lamp -> lamp.from().isBefore(end)
                        && lamp.to().filter(to -> to.isBefore(end)).isEmpty())
                .toList();
    }

    /** Where it was when the period ended. */
    public Optional<StayFacts> lastStay() {
        return stayOn(lastDay());
    }

    /** The days by where each of them ended, oldest stay first; days in no known enclosure last. */
    public List<StayLight> stays() {
        Map<Optional<StayFacts>, List<DayOfLight>> byStay =
                days.stream().collect(Collectors.groupingBy(this::stayOn, LinkedHashMap::new, Collectors.toList()));
        List<JudgedReading> counted = readings().stream().filter(lived::counts).toList();
        Stream<StayLight> housed = lived.stays().stream()
                .filter(stay -> byStay.containsKey(Optional.of(stay)))
                .map(stay -> new StayLight(
                        Optional.of(stay), byStay.getOrDefault(Optional.of(stay), List.of()), byRole(stay, counted)));
        List<DayOfLight> nowhere = byStay.getOrDefault(Optional.<StayFacts>empty(), List.of());
        Stream<StayLight> unhoused =
                nowhere.isEmpty() ? Stream.empty() : Stream.of(new StayLight(Optional.empty(), nowhere, Map.of()));
        return Stream.concat(housed, unhoused).toList();
    }

    private Map<PointRole, List<JudgedReading>> byRole(StayFacts stay, List<JudgedReading> counted) {
        return counted.stream()
                .filter(reading -> stay.enclosureId() == reading.enclosureId() && stay.holds(reading.takenAt()))
                .collect(Collectors.groupingBy(reading -> lived.point(reading).role()));
    }

    private Optional<StayFacts> stayOn(DayOfLight day) {
        Span that = Span.of(day.date(), zone);
        return lived.stays().stream()
                .filter(stay -> Lived.during(stay).meet(that).isPresent())
                .reduce((earlier, later) -> later);
    }
}
