package dapple.agreement;

import dapple.light.metrology.Compared;
import dapple.light.metrology.LampSet;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterPast;
import dapple.meter.MeterPasts;
import dapple.practice.LampReading;
import dapple.practice.LampReadings;
import dapple.reading.StandingReading;
import dapple.reading.StandingReadings;
import dapple.rig.Rigs;
import dapple.site.Given;
import dapple.site.SiteFacts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Gathers what meters are compared by, in a few questions to the database however long the record is. */
@Service
class Gathering {
    /** How far back readings count: for so long the search was tried. */
    private static final int MONTHS = 18;

    private final StandingReadings readings;
    private final LampReadings lampReadings;
    private final MeterPasts meters;
    private final Rigs rigs;

    Gathering(StandingReadings readings, LampReadings lampReadings, MeterPasts meters, Rigs rigs) {
        this.readings = readings;
        this.lampReadings = lampReadings;
        this.meters = meters;
        this.rigs = rigs;
    }

    /** Of the quantities of light that were read at all. */
    @Transactional(readOnly = true)
    public Collected of(SiteFacts site, Instant now) {
        Instant from = now.atZone(site.timeZone()).minusMonths(MONTHS).toInstant();
        Map<Long, MeterPast> pasts = meters.of(site.id());
        Map<Quantity, List<Compared>> found = new EnumMap<>(Quantity.class);
        Kept kept = new Kept(pasts, found);
        List<StandingReading> read = readings.since(site.id(), from);
        LampSets lamps = lamps(site, read, from, now);
        read.forEach(one -> kept.take(one, lamps));
        lampReadings.since(site.id(), from).forEach(kept::take);
        Set<MeterKey> current =
                pasts.values().stream().map(past -> MeterKey.at(past, now)).collect(Collectors.toSet());
        return new Collected(from, current, found);
    }

    private LampSets lamps(SiteFacts site, List<StandingReading> read, Instant from, Instant now) {
        Set<Long> enclosures = read.stream().map(StandingReading::enclosureId).collect(Collectors.toSet());
        return new LampSets(
                rigs.changes(site.id(), enclosures, Instant.EPOCH, now),
                rigs.lamps(site.id(), enclosures, from, now),
                site.timeZone(),
                now);
    }

    private record Kept(Map<Long, MeterPast> pasts, Map<Quantity, List<Compared>> found) {
        void take(StandingReading one, LampSets lamps) {
            MeterPast past = Given.of(pasts.get(one.meterId()));
            if (one.quantity().isTemperature() || !OwnScatter.isFine(past, one.amount())) {
                return;
            }
            LampSet lit = lamps.at(one.enclosureId(), one.quantity(), one.takenAt());
            double own = OwnScatter.byHand(past, one.amount());
            add(one.quantity(), past, Long.toString(one.pointId()), lit, new Amount(one.amount(), own, one.takenAt()));
        }

        void take(LampReading one) {
            MeterPast past = Given.of(pasts.get(one.meterId()));
            Quantity quantity = past.meter().quantity();
            if (!quantity.isTemperature() && OwnScatter.isFine(past, one.amount())) {
                LampSet lit = LampSets.ofReference(one.lampId());
                double own = OwnScatter.inAHolder(past, one.amount());
                add(quantity, past, lit.key(), lit, new Amount(one.amount(), own, one.at()));
            }
        }

        private void add(Quantity quantity, MeterPast past, String point, LampSet lit, Amount amount) {
            double factor = past.calibrationAt(amount.at())
                    .map(calibration -> calibration.factorAt(amount.displayed()))
                    .orElse(1.0);
            found.computeIfAbsent(quantity, unused -> new ArrayList<>())
                    .add(new Compared(
                            MeterKey.at(past, amount.at()).text(),
                            point,
                            lit,
                            amount.at(),
                            Math.log(amount.displayed() * factor),
                            amount.lnOwn()));
        }
    }

    private record Amount(double displayed, double lnOwn, Instant at) {}
}
