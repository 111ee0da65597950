package dapple.agreement;

import dapple.light.metrology.Compared;
import dapple.light.metrology.Doubt;
import dapple.light.metrology.DriftSettings;
import dapple.light.metrology.MeterDrift;
import dapple.light.metrology.MeterFinding;
import dapple.light.metrology.MeterFinding.Drifting;
import dapple.light.metrology.MeterFinding.Knocked;
import dapple.light.metrology.PairedMeters;
import dapple.light.metrology.SharedShift;
import dapple.light.quantity.Quantity;
import dapple.site.Given;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the readings of one quantity say of the meters of a site.
 *
 * @param from since when readings count
 * @param readings how many were compared
 * @param read from when to when each meter was read, by its key
 */
record Computed(
        Quantity quantity,
        Instant from,
        int readings,
        MeterDrift drift,
        List<PairedMeters> pairs,
        Map<String, Read> read,
        Set<MeterKey> current) {
    private static final double YEAR_SECONDS = 365.25 * 86_400;

    /** When a meter was read first and last. */
    record Read(Instant first, Instant last) {
        Read with(Instant at) {
            return new Read(at.isBefore(first) ? at : first, at.isAfter(last) ? at : last);
        }

        double years() {
            return Duration.between(first, last).toSeconds() / YEAR_SECONDS;
        }
    }

    /** Of a quantity that was read. */
    static Computed of(Quantity quantity, Collected collected) {
        List<Compared> readings = Given.of(collected.readings().get(quantity));
        Map<String, Read> read = new HashMap<>();
        readings.forEach(one -> read.put(
                one.meter(),
                read.getOrDefault(one.meter(), new Read(one.at(), one.at())).with(one.at())));
        return new Computed(
                quantity,
                collected.from(),
                readings.size(),
                MeterDrift.of(readings, DriftSettings.USUAL),
                PairedMeters.of(readings, DriftSettings.USUAL),
                read,
                collected.current());
    }

    boolean isCurrent(String meter) {
        return current.contains(MeterKey.read(meter));
    }

    /** What is to be told: nothing of a meter that has been calibrated since. */
    List<Told> told() {
        return Stream.concat(
                        drift.findings().stream()
                                .filter(finding -> isCurrent(finding.meter()))
                                .flatMap(finding -> told(finding).stream()),
                        drift.sharedShifts().stream().map(this::told))
                .toList();
    }

    private Optional<Told> told(MeterFinding finding) {
        if (finding instanceof Knocked knocked) {
            return Optional.of(new Told(
                    quantity,
                    FindingKind.KNOCKED,
                    Optional.of(MeterKey.read(knocked.meter())),
                    knocked.found(),
                    knocked.weekFrom(),
                    knocked.shift(),
                    knocked.shift().estimate(),
                    others(knocked.meter(), knocked.doubt()),
                    knocked.doubt().allLamps()));
        }
        return finding instanceof Drifting drifting ? Optional.of(told(drifting)) : Optional.empty();
    }

    private Told told(Drifting drifting) {
        Read of = Given.of(read.get(drifting.meter()));
        return new Told(
                quantity,
                FindingKind.DRIFTING,
                Optional.of(MeterKey.read(drifting.meter())),
                drifting.found(),
                of.first(),
                drifting.drift(),
                drifting.drift().estimate() * of.years(),
                others(drifting.meter(), drifting.doubt()),
                drifting.doubt().allLamps());
    }

    private Told told(SharedShift shift) {
        return new Told(
                quantity,
                FindingKind.ALL_AT_ONCE,
                Optional.empty(),
                shift.found(),
                shift.weekFrom(),
                shift.shift(),
                shift.shift().estimate(),
                Set.of(),
                true);
    }

    private static Set<Long> others(String meter, Doubt doubt) {
        long own = MeterKey.read(meter).meterId();
        return doubt.otherMeters().stream()
                .map(other -> MeterKey.read(other).meterId())
                .filter(other -> other != own)
                .collect(Collectors.toSet());
    }
}
