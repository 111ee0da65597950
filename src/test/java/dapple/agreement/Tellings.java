package dapple.agreement;

import dapple.light.metrology.Change;
import dapple.light.metrology.Doubt;
import dapple.light.metrology.MeterDrift;
import dapple.light.metrology.MeterFinding;
import dapple.light.metrology.PairedMeters;
import dapple.light.metrology.PairedOccasion;
import dapple.light.metrology.WeekOfMeter;
import dapple.light.quantity.Interval;
import dapple.meter.MeterFacts;
import dapple.reading.Patiently;
import dapple.site.SiteFacts;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.boot.test.context.TestComponent;

/** Stores outcomes of computations that say what a test wants. */
@TestComponent
public class Tellings {
    private static final Duration WEEK = Duration.ofDays(7);
    private static final Doubt SURE = new Doubt(List.of(), false);

    private final AgreementRecord record;
    private final FindingKeeping keeping;
    private final Patiently patiently;
    private final Clock clock;

    Tellings(AgreementRecord record, FindingKeeping keeping, Patiently patiently, Clock clock) {
        this.record = record;
        this.keeping = keeping;
        this.patiently = patiently;
        this.clock = clock;
    }

    /** It was knocked eight weeks ago. */
    public void knocked(SiteFacts site, MeterFacts meter, double ln) {
        knockedSince(site, meter, ln, WEEK.multipliedBy(8));
    }

    public void knockedSince(SiteFacts site, MeterFacts meter, double ln, Duration ago) {
        Instant since = clock.instant().minus(ago);
        Change change = new Change(ln, new Interval(ln - 0.02, ln + 0.02));
        keep(site, meter, List.of(new MeterFinding.Knocked(key(meter), since.plus(WEEK), since, change, SURE)));
    }

    /** It has drifted for a year, or the other meter the other way. */
    public void driftingMaybe(SiteFacts site, MeterFacts meter, MeterFacts other, double lnPerYear) {
        Change change = new Change(lnPerYear, new Interval(lnPerYear - 0.02, lnPerYear + 0.02));
        keep(
                site,
                meter,
                List.of(
                        new MeterFinding.Drifting(
                                key(meter), clock.instant(), change, new Doubt(List.of(key(other)), true)),
                        new MeterFinding.Unknown(key(other), MeterFinding.Why.NEEDS_REFERENCE)));
    }

    public void nothing(SiteFacts site, MeterFacts meter) {
        keep(site, meter, List.of(new MeterFinding.Steady(key(meter), new Interval(-0.01, 0.03))));
    }

    private void keep(SiteFacts site, MeterFacts meter, List<MeterFinding> found) {
        Instant now = clock.instant();
        List<WeekOfMeter> weeks = IntStream.range(0, 10)
                .mapToObj(week -> new WeekOfMeter(
                        key(meter), now.minus(WEEK.multipliedBy(10L - week)), week < 2 ? 0.01 : -0.1, 0.015, 12))
                .toList();
        Map<String, Computed.Read> read = Map.of(key(meter), new Computed.Read(now.minus(Duration.ofDays(365)), now));
        Computed computed = new Computed(
                meter.quantity(),
                now.minus(Duration.ofDays(548)),
                100,
                new MeterDrift(found, List.of(), List.of(), weeks, 1),
                pairs(found, now),
                read,
                found.stream().map(one -> MeterKey.read(one.meter())).collect(Collectors.toSet()));
        patiently.run(() -> {
            record.replace(site.id(), computed, now);
            keeping.keep(site.id(), computed);
            return site.id();
        });
    }

    private static List<PairedMeters> pairs(List<MeterFinding> found, Instant now) {
        List<PairedOccasion> occasions = List.of(new PairedOccasion(now, -0.08, 0.02, 10));
        return found.size() < 2
                ? List.of()
                : List.of(new PairedMeters(found.get(0).meter(), found.get(1).meter(), occasions));
    }

    private static String key(MeterFacts meter) {
        return new MeterKey(meter.id(), Optional.empty()).text();
    }
}
