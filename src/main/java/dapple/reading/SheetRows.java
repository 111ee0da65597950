package dapple.reading;

import dapple.enclosure.Facing;
import dapple.light.quantity.Quantity;
import dapple.reading.Verdict.Basis;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Writes visits, readings and verdicts down by the batch: what JPA would take minutes for. */
@Component
class SheetRows {
    private static final String VISIT =
            "insert into visit (site_id, enclosure_id, person_id, entry_key, begun_at, taken_by, day_only) "
                    + "values (?, ?, ?, ?, ?, ?, ?)";
    private static final String READING =
            "insert into reading (site_id, visit_id, point_id, meter_id, quantity, amount, facing, held_as_asked, "
                    + "taken_at, recorded_at, recorded_by, entry_key) values (?, ?, ?, ?, ?, ?, ?, true, ?, ?, ?, ?)";
    private static final String VERDICT =
            "insert into verdict (site_id, reading_id, species_id, target_version_id, calibration_id, rig_id, "
                    + "vet_order_id, state, factor, amount, low, high, may_exceed, finer_than_meter, no_gradient, "
                    + "judged_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    /** Kept visits and what was read in each, of one enclosure over a time. */
    private static final String ON_RECORD = "select v.id, v.entry_key, r.entry_key, r.quantity, r.amount from visit v "
            + "left join reading r on r.visit_id = v.id "
            + "where v.enclosure_id = ? and v.begun_at >= ? and v.begun_at <= ?";

    private final JdbcTemplate database;

    SheetRows(JdbcTemplate database) {
        this.database = database;
    }

    OnRecord onRecord(long enclosureId, Instant from, Instant to) {
        OnRecord found = new OnRecord();
        database.query(
                ON_RECORD,
                row -> {
                    long visit = row.getLong(1);
                    found.addVisit(row.getObject(2, UUID.class), visit);
                    UUID reading = row.getObject(3, UUID.class);
                    if (reading != null) {
                        found.addReading(visit, reading, Quantity.valueOf(row.getString(4)), row.getDouble(5));
                    }
                },
                enclosureId,
                utc(from),
                utc(to));
        return found;
    }

    /** The ids that they got, in their order. */
    List<Long> addVisits(long siteId, List<NewVisit> visits) {
        return keyed(VISIT, visits, (row, visit) -> {
            row.setLong(1, siteId);
            row.setLong(2, visit.visit().enclosureId());
            row.setLong(3, visit.personId());
            row.setObject(4, visit.key());
            row.setObject(5, utc(visit.visit().at()));
            row.setString(6, visit.takenBy());
            row.setBoolean(7, visit.visit().dayOnly());
        });
    }

    /** The ids that they got, in their order. */
    List<Long> addReadings(SheetRun run, List<NewReading> readings) {
        return keyed(READING, readings, (row, reading) -> {
            row.setLong(1, run.siteId());
            row.setLong(2, reading.visitId());
            row.setLong(3, reading.said().pointId());
            row.setLong(4, reading.said().meterId());
            row.setString(5, reading.quantity().name());
            row.setDouble(6, reading.said().amount());
            row.setString(7, reading.facing().name());
            row.setObject(8, utc(reading.said().takenAt()));
            row.setObject(9, utc(run.recordedAt(reading.said().takenAt())));
            row.setLong(10, run.by().personId());
            row.setObject(11, reading.key());
        });
    }

    void addVerdicts(SheetRun run, List<Finding> findings) {
        database.batchUpdate(VERDICT, findings, Math.max(1, findings.size()), (row, finding) -> {
            Basis basis = finding.basis();
            row.setLong(1, run.siteId());
            row.setLong(2, finding.shown().id());
            set(row, 3, basis.speciesId());
            set(row, 4, basis.targetVersionId());
            set(row, 5, basis.calibrationId());
            set(row, 6, basis.rigId());
            set(row, 7, basis.vetOrderId());
            row.setString(8, finding.judgement().state().map(Enum::name).orElse(null));
            row.setObject(9, finding.corrected().factor().orElse(null), Types.DOUBLE);
            row.setDouble(10, finding.corrected().measured().amount());
            row.setDouble(11, finding.corrected().measured().interval().low());
            row.setDouble(12, finding.corrected().measured().interval().high());
            row.setBoolean(13, finding.judgement().mayExceed());
            row.setBoolean(14, finding.judgement().finerThanMeter());
            row.setBoolean(15, finding.judgement().noGradient());
            row.setObject(16, utc(run.recordedAt(finding.shown().takenAt())));
        });
    }

    private static void set(PreparedStatement row, int at, @Nullable Long id) throws SQLException {
        row.setObject(at, id, Types.BIGINT);
    }

    private <T> List<Long> keyed(String sql, List<T> added, Filling<T> filling) {
        List<Long> ids = new ArrayList<>(added.size());
        if (!added.isEmpty()) {
            database.execute(
                    connection -> connection.prepareStatement(sql, new String[] {"id"}), (PreparedStatement row) -> {
                        for (T one : added) {
                            filling.fill(row, one);
                            row.addBatch();
                        }
                        row.executeBatch();
                        try (ResultSet keys = row.getGeneratedKeys()) {
                            while (keys.next()) {
                                ids.add(keys.getLong(1));
                            }
                        }
                        return ids;
                    });
        }
        return ids;
    }

    private static OffsetDateTime utc(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }

    private interface Filling<T> {
        void fill(PreparedStatement row, T added) throws SQLException;
    }

    /** A visit that is not on record, by whom it is known here and what the sheet calls them where nobody is. */
    record NewVisit(
            SheetVisit visit,
            UUID key,
            long personId,
            @Nullable String takenBy) {}

    record NewReading(long visitId, UUID key, SheetReading said, Quantity quantity, Facing facing) {}
}
