package dapple.rig;

import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.site.Given;
import dapple.site.Sites;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How long lamps have burnt and hung: by their timers and fittings. */
@Service
public class BurnHours {
    private static final double SECONDS_PER_HOUR = 3600;

    private final FittingRepository fittings;
    private final Lamps lamps;
    private final Sites sites;

    BurnHours(FittingRepository fittings, Lamps lamps, Sites sites) {
        this.fittings = fittings;
        this.lamps = lamps;
        this.sites = sites;
    }

    /**
     * How long a lamp had burnt at an instant: its hours when it was entered, and the timer's time over its fittings, by
     * local days. Lamps that were off on purpose are not taken into account.
     *
     * @return in h; empty, not known, if its hours then or one of its timers are not
     */
    @Transactional(readOnly = true)
    public Optional<Double> at(long siteId, long lampId, Instant at) {
        LampFacts lamp = lamps.get(siteId, lampId);
        return hours(
                lamp, fittings.ofLamp(siteId, lampId), at, sites.get(siteId).timeZone());
    }

    /** How long the lamps of a rig had burnt at an instant, and since when they hang there, by lamp. */
    @Transactional(readOnly = true)
    public Map<Long, Burnt> of(long siteId, Rig rig, Instant at, ZoneId zone) {
        Map<Long, LampFacts> hanging = rig.fittings().stream()
                .map(FittingFacts::lamp)
                .collect(Collectors.toMap(LampFacts::id, lamp -> lamp, (one, other) -> one));
        if (hanging.isEmpty()) {
            return Map.of();
        }
        return fittings.ofLamps(siteId, hanging.keySet()).stream()
                .filter(fitting -> !fitting.fromAt().isAfter(at))
                .collect(Collectors.groupingBy(Fitting::lampId))
                .entrySet()
                .stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        entry -> new Burnt(
                                hours(Given.of(hanging.get(entry.getKey())), entry.getValue(), at, zone),
                                since(entry.getValue()))));
    }

    /**
     * What became of a lamp.
     *
     * @param hours empty: not known
     * @param since when it was fitted where it hangs
     */
    public record Burnt(Optional<Double> hours, Instant since) {}

    /**
     * How long the lamps of a rig have burnt over [from, to), wherever they hung, by lamp; in h, without those that are not
     * known.
     */
    @Transactional(readOnly = true)
    public Map<Long, Double> within(long siteId, Rig rig, Instant from, Instant to, ZoneId zone) {
        List<Long> ids =
                rig.fittings().stream().map(fitting -> fitting.lamp().id()).toList();
        if (ids.isEmpty()) {
            return Map.of();
        }
        return fittings.ofLamps(siteId, ids).stream()
                .collect(Collectors.groupingBy(Fitting::lampId))
                .entrySet()
                .stream()
                .flatMap(hung -> burnt(hung.getValue(), from, to, zone)
                        .map(duration -> Map.entry(hung.getKey(), duration.toSeconds() / SECONDS_PER_HOUR))
                        .stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** The same of all lamps of a site, those that are not known left out. */
    @Transactional(readOnly = true)
    public Map<Long, Double> atSite(long siteId, Instant at) {
        ZoneId zone = sites.get(siteId).timeZone();
        Map<Long, List<Fitting>> byLamp = fittings.all(siteId).stream().collect(Collectors.groupingBy(Fitting::lampId));
        Map<Long, Optional<Double>> hours = lamps.byId(siteId).values().stream()
                .collect(Collectors.toMap(
                        LampFacts::id, lamp -> hours(lamp, byLamp.getOrDefault(lamp.id(), List.of()), at, zone)));
        return hours.entrySet().stream()
                .filter(entry -> entry.getValue().isPresent())
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().orElseThrow()));
    }

    private static Optional<Double> hours(LampFacts lamp, List<Fitting> hung, Instant at, ZoneId zone) {
        return lamp.burnHoursAtEntry()
                .flatMap(before -> burnt(hung, Instant.EPOCH, at, zone)
                        .map(duration -> before + duration.toSeconds() / SECONDS_PER_HOUR));
    }

    /** Empty: one of the timers is not known. */
    private static Optional<Duration> burnt(List<Fitting> hung, Instant from, Instant to, ZoneId zone) {
        Duration burnt = Duration.ZERO;
        for (Fitting fitting : hung) {
            Instant begin = fitting.fromAt().isAfter(from) ? fitting.fromAt() : from;
            Instant end = fitting.toAt().filter(to::isAfter).orElse(to);
            if (begin.isBefore(end)) {
                Optional<Duration> part = fitting.hanging().timer().map(timer -> timer.onWithin(begin, end, zone));
                if (part.isEmpty()) {
                    return Optional.empty();
                }
                burnt = burnt.plus(part.get());
            }
        }
        return Optional.of(burnt);
    }

    /**
     * Since when lamps hang where they hang now without a break, by lamp: moved or timed anew they hang on, in another
     * enclosure they do not.
     */
    @Transactional(readOnly = true)
    public Map<Long, Instant> fittedSince(long siteId) {
        return fittings.all(siteId).stream().collect(Collectors.groupingBy(Fitting::lampId)).entrySet().stream()
                .filter(entry -> last(entry.getValue()).toAt().isEmpty())
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> since(entry.getValue())));
    }

    /** The same of one lamp; empty if it hangs nowhere. */
    @Transactional(readOnly = true)
    public Optional<Instant> fittedSince(long siteId, long lampId) {
        return Optional.of(fittings.ofLamp(siteId, lampId))
                .filter(hung -> !hung.isEmpty() && last(hung).toAt().isEmpty())
                .map(BurnHours::since);
    }

    private static Fitting last(List<Fitting> hung) {
        return hung.get(hung.size() - 1);
    }

    private static Instant since(List<Fitting> hung) {
        Fitting first = last(hung);
        for (int index = hung.size() - 2; index >= 0 && goesOn(hung.get(index), first); index--) {
            first = hung.get(index);
        }
        return first.fromAt();
    }

    private static boolean goesOn(Fitting before, Fitting after) {
        return before.enclosureId() == after.enclosureId()
                && before.toAt().filter(after.fromAt()::equals).isPresent();
    }
}
