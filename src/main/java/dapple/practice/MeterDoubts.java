package dapple.practice;

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
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which readings are in doubt since a meter was dropped: told in one step, and of meters that were dropped alone. */
@Service
public class MeterDoubts {
    private static final String NO_LAMP = "cast(null as timestamp with time zone)";
    private static final String DROPPED =
            " and %s.meter_id in (select d.meter_id from meter_event d where d.site_id = :siteId and d.kind = 'DROPPED'"
                    + " and d.withdrawn_at is null)";

    /** What speaks for or against the meters of a site. */
    static final String SIGNS = "(select e.meter_id, 'DROPPED' as kind, e.happened_at as moment, " + NO_LAMP
            + " as lamp_since, e.recorded_at"
            + " from meter_event e where e.site_id = :siteId and e.kind = 'DROPPED' and e.withdrawn_at is null"
            + " union all select c.meter_id,"
            + " case when c.kind = 'DARK_ZERO' then 'DARK' else 'LAMP' end || case when c.good then '_GOOD' else '_BAD' end,"
            + " c.checked_at, l.first_at, c.recorded_at from meter_check c"
            + " left join reference_lamp l on l.id = c.reference_lamp_id where c.site_id = :siteId"
            + DROPPED.formatted("c")
            + " union all select l.meter_id, 'LAMP_NAMED', l.first_at, l.first_at, l.recorded_at"
            + " from reference_lamp l where l.site_id = :siteId" + DROPPED.formatted("l")
            + " union all select l.meter_id, 'LAMP_ENDED', l.ended_at, l.first_at, l.recorded_at"
            + " from reference_lamp l where l.site_id = :siteId and l.ended_at is not null" + DROPPED.formatted("l")
            + " union all select k.meter_id, 'CALIBRATED', k.calibrated_at, " + NO_LAMP + ", k.recorded_at"
            + " from calibration k where k.site_id = :siteId and k.open_calibrated_at is not null"
            + DROPPED.formatted("k")
            + ") sign";

    private final JdbcClient database;

    MeterDoubts(JdbcClient database) {
        this.database = database;
    }

    @Transactional(readOnly = true)
    public Doubts at(long siteId) {
        Gathered gathered = new Gathered();
        database.sql("select meter_id, kind, moment, lamp_since, recorded_at from " + SIGNS)
                .param("siteId", siteId)
                .query(gathered::take);
        return gathered.doubts();
    }

    /** Signs as they come, in whatever order. */
    static final class Gathered {
        private final List<OfMeter> signs = new ArrayList<>();

        void take(ResultSet row) throws SQLException {
            Sign sign = new Sign(
                    moment(row, "moment").orElseThrow(),
                    Sign.Kind.valueOf(row.getString("kind")),
                    moment(row, "lamp_since"));
            signs.add(new OfMeter(
                    row.getLong("meter_id"), sign, moment(row, "recorded_at").orElseThrow()));
        }

        Doubts doubts() {
            Map<Long, List<Sign>> byMeter = signs.stream()
                    .sorted(Comparator.comparing((OfMeter one) -> one.sign().at())
                            .thenComparing(OfMeter::recordedAt))
                    .collect(Collectors.groupingBy(
                            OfMeter::meterId, Collectors.mapping(OfMeter::sign, Collectors.toList())));
            Map<Long, List<Doubt>> found = new HashMap<>();
            byMeter.forEach((meter, inOrder) -> found.put(meter, Doubting.of(inOrder)));
            return new Doubts(found);
        }

        private static Optional<Instant> moment(ResultSet row, String column) throws SQLException {
            return Optional.ofNullable(row.getObject(column, OffsetDateTime.class))
                    .map(OffsetDateTime::toInstant);
        }
    }

    private record OfMeter(long meterId, Sign sign, Instant recordedAt) {}
}
