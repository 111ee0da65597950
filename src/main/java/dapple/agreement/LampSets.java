package dapple.agreement;

import dapple.light.metrology.DeclineOfClass;
import dapple.light.metrology.LampSet;
import dapple.light.quantity.Quantity;
import dapple.rig.FittedLamp;
import dapple.rig.LampTimer;
import dapple.rig.RigChangeFacts;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What lit the enclosures of a site, from one change of their light to the next. */
final class LampSets {
    /** Of lamps that are not on record: those of a tube, and wide (ours). */
    static final DeclineOfClass UNKNOWN = new DeclineOfClass(1e-4, 1.0, 12 * 365.25);

    /** A lamp that is kept for reference: two hours a week, as a tube (ours). */
    private static final DeclineOfClass REFERENCE = new DeclineOfClass(1e-4, 0.8, 104);

    private static final Duration YEAR = Duration.ofDays(365);
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double UNKNOWN_HOURS_A_DAY = 12;

    private final Map<Long, NavigableMap<Instant, Long>> changes = new HashMap<>();
    private final Map<Long, List<FittedLamp>> lamps;
    private final ZoneId zone;
    private final Instant now;
    private final Map<LampTimer, Double> hoursOfTimers = new HashMap<>();
    private final Map<Lit, LampSet> known = new HashMap<>();

    /**
     * Of some enclosures.
     *
     * @param changes of their rigs, those that no reading can tell among them
     * @param lamps that hung there over the same time
     */
    LampSets(List<RigChangeFacts> changes, List<FittedLamp> lamps, ZoneId zone, Instant now) {
        changes.stream()
                .filter(RigChangeFacts::isOfLight)
                .forEach(change -> this.changes
                        .computeIfAbsent(change.enclosureId(), id -> new TreeMap<>())
                        .put(change.at(), change.id()));
        this.lamps = lamps.stream().collect(Collectors.groupingBy(FittedLamp::enclosureId));
        this.zone = zone;
        this.now = now;
    }

    /** The light of one quantity since a change; 0 before the first that is on record. */
    private record Lit(long enclosureId, long changeId, Quantity quantity) {}

    static LampSet ofReference(long lampId) {
        return new LampSet("reference " + lampId, REFERENCE);
    }

    LampSet at(long enclosureId, Quantity quantity, Instant at) {
        Map.Entry<Instant, Long> since =
                changes.getOrDefault(enclosureId, new TreeMap<>()).floorEntry(at);
        Lit lit = new Lit(enclosureId, since == null ? 0 : since.getValue(), quantity);
        return known.computeIfAbsent(
                lit, one -> new LampSet(one.enclosureId() + "/" + one.changeId(), decline(one, at)));
    }

    private DeclineOfClass decline(Lit lit, Instant at) {
        List<FittedLamp> giving = lamps.getOrDefault(lit.enclosureId(), List.of()).stream()
                .filter(lamp -> lamp.lampClass().gives(lit.quantity()) && hung(lamp, at))
                .toList();
        return giving.isEmpty() ? UNKNOWN : mean(giving);
    }

    private static boolean hung(FittedLamp lamp, Instant at) {
        return !lamp.from().isAfter(at)
                && lamp.to().filter(end -> !at.isBefore(end)).isEmpty();
    }

    /** Each lamp taken to give as much as the others, as wide as the widest. */
    private DeclineOfClass mean(List<FittedLamp> giving) {
        double hours = giving.stream().mapToDouble(this::hoursPerYear).average().orElse(0);
        double loss = giving.stream()
                .mapToDouble(lamp -> lamp.lampClass().usualLossPerHour() * hoursPerYear(lamp))
                .average()
                .orElse(0);
        double scatter = giving.stream()
                .mapToDouble(lamp -> lamp.lampClass().lossScatter())
                .max()
                .orElse(0);
        return new DeclineOfClass(hours == 0 ? 0 : loss / hours, scatter, hours);
    }

    private double hoursPerYear(FittedLamp lamp) {
        return lamp.timer()
                .map(timer -> hoursOfTimers.computeIfAbsent(timer, this::hoursPerYear))
                .orElse(UNKNOWN_HOURS_A_DAY * YEAR.toDays());
    }

    private double hoursPerYear(LampTimer timer) {
        return timer.onWithin(now.minus(YEAR), now, zone).toSeconds() / SECONDS_PER_HOUR;
    }
}
