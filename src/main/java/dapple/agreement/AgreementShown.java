package dapple.agreement;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the newest computations gave, as pages show it: of each meter since its newest calibration. */
@Service
class AgreementShown {
    private static final String RUNS =
            "select id, quantity, computed_at, readings from agreement_run where site_id = :siteId";
    private static final String METERS = "select m.run_id, m.place, m.meter_id, m.standing, m.ln_low_per_year,"
            + " m.ln_high_per_year from agreement_meter m join agreement_run r on r.id = m.run_id"
            + " where r.site_id = :siteId and m.is_current = true order by m.place";
    private static final String WEEKS = "select w.run_id, w.meter_place, w.from_at, w.ln_shift, w.standard_error,"
            + " w.enclosures, w.is_beyond from agreement_week w join agreement_run r on r.id = w.run_id"
            + " where r.site_id = :siteId order by w.from_at";
    private static final String PAIRS = "select p.* from agreement_pair p join agreement_run r on r.id = p.run_id"
            + " where r.site_id = :siteId order by p.first_place, p.second_place";

    private final JdbcClient database;

    AgreementShown(JdbcClient database) {
        this.database = database;
    }

    /** By quantity; none before the first computation. */
    @Transactional(readOnly = true)
    public List<QuantityShown> at(long siteId) {
        Map<Named, List<WeekShown>> weeks = new HashMap<>();
        ask(
                WEEKS,
                siteId,
                row -> weeks.computeIfAbsent(named(row, "meter_place"), unused -> new ArrayList<>())
                        .add(week(row)));
        Map<Named, MeterShown> meters = new TreeMap<>();
        ask(METERS, siteId, row -> meters.put(named(row, "place"), meter(row, weeks)));
        Map<Long, List<PairShown>> pairs = new HashMap<>();
        ask(
                PAIRS,
                siteId,
                row -> pairs.computeIfAbsent(row.getLong("run_id"), unused -> new ArrayList<>())
                        .addAll(pair(row, meters).stream().toList()));
        List<QuantityShown> shown = new ArrayList<>();
        ask(RUNS, siteId, row -> shown.add(quantity(row, meters, pairs)));
        shown.sort(Comparator.comparing(QuantityShown::quantity));
        return shown;
    }

    private void ask(String sql, long siteId, RowCallbackHandler taking) {
        database.sql(sql).param("siteId", siteId).query(taking);
    }

    /** A meter of a run. */
    private record Named(long run, int place) implements Comparable<Named> {
        @Override
        public int compareTo(Named other) {
            return Comparator.comparingLong(Named::run)
                    .thenComparingInt(Named::place)
                    .compare(this, other);
        }
    }

    private static Named named(ResultSet row, String place) throws SQLException {
        return new Named(row.getLong("run_id"), row.getInt(place));
    }

    private static WeekShown week(ResultSet row) throws SQLException {
        return new WeekShown(
                moment(row, "from_at"),
                row.getDouble("ln_shift"),
                number(row, "standard_error"),
                row.getInt("enclosures"),
                row.getBoolean("is_beyond"));
    }

    private static MeterShown meter(ResultSet row, Map<Named, List<WeekShown>> weeks) throws SQLException {
        return new MeterShown(
                row.getLong("meter_id"),
                Standing.valueOf(row.getString("standing")),
                interval(row, "ln_low_per_year", "ln_high_per_year"),
                weeks.getOrDefault(named(row, "place"), List.of()));
    }

    /** None if one of them has been calibrated since. */
    private static Optional<PairShown> pair(ResultSet row, Map<Named, MeterShown> meters) throws SQLException {
        MeterShown first = meters.get(named(row, "first_place"));
        MeterShown second = meters.get(named(row, "second_place"));
        if (first == null || second == null) {
            return Optional.empty();
        }
        return Optional.of(new PairShown(
                first.meterId(),
                second.meterId(),
                moment(row, "newest_at"),
                row.getInt("occasions"),
                row.getDouble("ln_ratio"),
                new Interval(row.getDouble("ln_ratio_low"), row.getDouble("ln_ratio_high")),
                number(row, "ln_per_year"),
                interval(row, "ln_low_per_year", "ln_high_per_year")));
    }

    private static QuantityShown quantity(
            ResultSet row, Map<Named, MeterShown> meters, Map<Long, List<PairShown>> pairs) throws SQLException {
        long run = row.getLong("id");
        return new QuantityShown(
                Quantity.valueOf(row.getString("quantity")),
                moment(row, "computed_at"),
                row.getInt("readings"),
                meters.entrySet().stream()
                        .filter(meter -> meter.getKey().run() == run)
                        .map(Map.Entry::getValue)
                        .toList(),
                pairs.getOrDefault(run, List.of()));
    }

    private static Optional<Interval> interval(ResultSet row, String low, String high) throws SQLException {
        Optional<Double> from = number(row, low);
        Optional<Double> to = number(row, high);
        return from.flatMap(lowest -> to.map(highest -> new Interval(lowest, highest)));
    }

    private static Optional<Double> number(ResultSet row, String column) throws SQLException {
        double number = row.getDouble(column);
        return row.wasNull() ? Optional.empty() : Optional.of(number);
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
