package dapple.practice;

import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * How the meters of a site stand: what was last told and checked of each, gathered in one step. What the readings say of a
 * meter is worked out by a feature that uses this one; its table is read here, so that it is asked for in the same step.
 */
@Service
public class MeterStandings {
    private static final String LATER_EVENT = "(select 1 from meter_event n where n.meter_id = e.meter_id"
            + " and n.kind <> 'DROPPED' and n.withdrawn_at is null and (n.happened_at > e.happened_at"
            + " or (n.happened_at = e.happened_at and n.id > e.id)))";
    private static final String LATER_CHECK = "(select 1 from meter_check n where n.meter_id = c.meter_id"
            + " and n.kind = c.kind and (n.checked_at > c.checked_at or (n.checked_at = c.checked_at and n.id > c.id)))";
    private static final String NO_SIGN =
            ", cast(null as timestamp with time zone), cast(null as timestamp with time zone)";
    private static final String NEWEST = "select 'EVENT' as what, e.id, e.meter_id, e.kind, e.happened_at as moment,"
            + " 0.0e0 as amount, 0.0e0 as lowest, 0.0e0 as highest, true as good, cast(null as bigint) as lamp_id,"
            + " e.note as words, '' as set_up, e.recorded_by, cast(null as timestamp with time zone) as lamp_since,"
            + " cast(null as timestamp with time zone) as recorded_at from meter_event e"
            + " where e.site_id = :siteId and e.kind <> 'DROPPED' and e.withdrawn_at is null and not exists "
            + LATER_EVENT
            + " union all select 'CHECK', c.id, c.meter_id, c.kind, c.checked_at, c.amount, c.lowest, c.highest, c.good,"
            + " c.reference_lamp_id, c.note, '', c.recorded_by" + NO_SIGN + " from meter_check c"
            + " where c.site_id = :siteId and not exists " + LATER_CHECK
            + " union all select 'LAMP', l.id, l.meter_id, '', l.first_at, l.first_amount, 0.0e0, 0.0e0, true, l.id, l.name,"
            + " l.set_up, l.recorded_by" + NO_SIGN
            + " from reference_lamp l where l.site_id = :siteId and l.open_meter_id is not null"
            + " union all select 'CHANGE', f.id, f.meter_id, f.kind, f.week_from, f.ln_now, 0.0e0, 0.0e0,"
            + " case when f.is_maybe_lamps = true or exists (select 1 from agreement_doubt d where d.finding_id = f.id)"
            + " then false else true end, cast(null as bigint), '', '', cast(null as bigint)" + NO_SIGN
            + " from agreement_finding f"
            + " where f.site_id = :siteId and f.open_key is not null and f.meter_id is not null"
            + " union all select 'SIGN', cast(null as bigint), sign.meter_id, sign.kind, sign.moment, 0.0e0, 0.0e0, 0.0e0,"
            + " true, cast(null as bigint), '', '', cast(null as bigint), sign.lamp_since, sign.recorded_at from "
            + MeterDoubts.SIGNS;

    private final Meters meters;
    private final JdbcClient database;
    private final Clock clock;

    MeterStandings(Meters meters, JdbcClient database, Clock clock) {
        this.meters = meters;
        this.database = database;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public MeterStanding at(long siteId, ZoneId zone) {
        Gathered gathered = new Gathered(
                new HashMap<>(), new HashMap<>(), new HashMap<>(), new HashMap<>(), new MeterDoubts.Gathered());
        database.sql(NEWEST).param("siteId", siteId).query(gathered::take);
        return new MeterStanding(
                gathered.events(),
                gathered.checks(),
                gathered.lamps(),
                gathered.changes(),
                gathered.signs().doubts(),
                clock.instant(),
                zone);
    }

    /** What is due with the meters in use. */
    @Transactional(readOnly = true)
    public List<PracticeDue> due(long siteId, ZoneId zone) {
        List<MeterFacts> inUse = meters.inUse(siteId);
        return inUse.isEmpty() ? List.of() : at(siteId, zone).due(inUse);
    }

    private record Gathered(
            Map<Long, MeterEventFacts> events,
            Map<Long, List<MeterCheckFacts>> checks,
            Map<Long, ReferenceLampFacts> lamps,
            Map<Long, SeemsChanged> changes,
            MeterDoubts.Gathered signs) {
        void take(ResultSet row) throws SQLException {
            long meter = row.getLong("meter_id");
            switch (row.getString("what")) {
                case "EVENT" -> events.put(meter, event(row));
                case "CHECK" ->
                    checks.computeIfAbsent(meter, id -> new ArrayList<>()).add(check(row));
                case "CHANGE" ->
                    changes.put(meter, new SeemsChanged(moment(row), row.getDouble("amount"), row.getBoolean("good")));
                case "SIGN" -> signs.take(row);
                default -> lamps.put(meter, lamp(row));
            }
        }

        private static MeterEventFacts event(ResultSet row) throws SQLException {
            return new MeterEventFacts(
                    row.getLong("id"),
                    row.getLong("meter_id"),
                    MeterEventKind.valueOf(row.getString("kind")),
                    moment(row),
                    row.getString("words"),
                    row.getLong("recorded_by"),
                    Optional.empty());
        }

        private static MeterCheckFacts check(ResultSet row) throws SQLException {
            CheckKind kind = CheckKind.valueOf(row.getString("kind"));
            return new MeterCheckFacts(
                    row.getLong("meter_id"),
                    kind,
                    kind == CheckKind.REFERENCE_LAMP ? Optional.of(row.getLong("lamp_id")) : Optional.empty(),
                    row.getDouble("amount"),
                    row.getDouble("lowest"),
                    row.getDouble("highest"),
                    row.getBoolean("good"),
                    moment(row),
                    row.getString("words"),
                    row.getLong("recorded_by"));
        }

        private static ReferenceLampFacts lamp(ResultSet row) throws SQLException {
            return new ReferenceLampFacts(
                    row.getLong("lamp_id"),
                    row.getLong("meter_id"),
                    row.getString("words"),
                    row.getString("set_up"),
                    row.getDouble("amount"),
                    moment(row),
                    Optional.empty(),
                    row.getLong("recorded_by"));
        }

        private static Instant moment(ResultSet row) throws SQLException {
            return row.getObject("moment", OffsetDateTime.class).toInstant();
        }
    }
}
