package dapple.agreement;

import dapple.light.metrology.Change;
import dapple.light.metrology.MeterFinding;
import dapple.light.metrology.MeterFinding.Steady;
import dapple.light.metrology.PairedMeters;
import dapple.light.metrology.WeekOfMeter;
import dapple.light.quantity.Interval;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Writes down what a computation gave, in place of the one before, within its transaction. */
@Component
class AgreementRecord {
    private static final String OF_RUN =
            " where run_id in (select id from agreement_run where site_id = ? and quantity = ?)";

    private final JdbcTemplate database;

    AgreementRecord(JdbcTemplate database) {
        this.database = database;
    }

    void replace(long siteId, Computed computed, Instant now) {
        String quantity = computed.quantity().name();
        database.update("delete from agreement_pair" + OF_RUN, siteId, quantity);
        database.update("delete from agreement_week" + OF_RUN, siteId, quantity);
        database.update("delete from agreement_meter" + OF_RUN, siteId, quantity);
        database.update("delete from agreement_run where site_id = ? and quantity = ?", siteId, quantity);
        database.update(
                "insert into agreement_run (site_id, quantity, computed_at, readings, scatter_factor)"
                        + " values (?, ?, ?, ?, ?)",
                siteId,
                quantity,
                moment(now),
                computed.readings(),
                computed.drift().scatterFactor());
        write(computed, runOf(siteId, quantity));
    }

    private long runOf(long siteId, String quantity) {
        Long id = database.queryForObject(
                "select id from agreement_run where site_id = ? and quantity = ?", Long.class, siteId, quantity);
        return id == null ? 0 : id;
    }

    private void write(Computed computed, long run) {
        List<String> keys =
                computed.drift().findings().stream().map(MeterFinding::meter).toList();
        database.batchUpdate(
                "insert into agreement_meter (run_id, meter_id, place, calibration_id, is_current, standing,"
                        + " ln_low_per_year, ln_high_per_year) values (?, ?, ?, ?, ?, ?, ?, ?)",
                computed.drift().findings().stream()
                        .map(one -> meter(run, one, keys.indexOf(one.meter()), computed.isCurrent(one.meter())))
                        .toList());
        database.batchUpdate(
                "insert into agreement_week (run_id, meter_place, from_at, ln_shift, standard_error, enclosures,"
                        + " is_beyond) values (?, ?, ?, ?, ?, ?, ?)",
                computed.drift().weeks().stream()
                        .filter(week -> Double.isFinite(week.lnShift()))
                        .map(week -> week(run, week, keys.indexOf(week.meter())))
                        .toList());
        database.batchUpdate(
                "insert into agreement_pair (run_id, first_place, second_place, newest_at, occasions, ln_ratio,"
                        + " ln_ratio_low, ln_ratio_high, ln_per_year, ln_low_per_year, ln_high_per_year)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                computed.pairs().stream()
                        .map(pair -> pair(run, pair, keys.indexOf(pair.first()), keys.indexOf(pair.second())))
                        .toList());
    }

    private static @Nullable Object[] meter(long run, MeterFinding finding, int place, boolean isCurrent) {
        MeterKey key = MeterKey.read(finding.meter());
        Optional<Interval> drift =
                finding instanceof Steady steady ? Optional.of(steady.lnPerYear()) : Optional.empty();
        return new @Nullable Object[] {
            run,
            key.meterId(),
            place,
            key.calibrationId().orElse(null),
            isCurrent,
            Standing.of(finding).name(),
            drift.map(Interval::low).orElse(null),
            drift.map(Interval::high).orElse(null)
        };
    }

    private static @Nullable Object[] week(long run, WeekOfMeter week, int place) {
        return new @Nullable Object[] {
            run,
            place,
            moment(week.from()),
            week.lnShift(),
            Double.isFinite(week.standardError()) ? week.standardError() : null,
            week.enclosures(),
            week.isBeyond()
        };
    }

    private static @Nullable Object[] pair(long run, PairedMeters pair, int first, int second) {
        Change newest = pair.newest();
        Optional<Change> drift = pair.drift();
        return new @Nullable Object[] {
            run,
            first,
            second,
            moment(pair.occasions().get(pair.occasions().size() - 1).at()),
            pair.occasions().size(),
            newest.estimate(),
            newest.interval().low(),
            newest.interval().high(),
            drift.map(Change::estimate).orElse(null),
            drift.map(change -> change.interval().low()).orElse(null),
            drift.map(change -> change.interval().high()).orElse(null)
        };
    }

    private static OffsetDateTime moment(Instant at) {
        return OffsetDateTime.ofInstant(at, ZoneOffset.UTC);
    }
}
