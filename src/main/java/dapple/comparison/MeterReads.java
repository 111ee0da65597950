package dapple.comparison;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What was read with some meters at some points over the time of a comparison. */
@Component
class MeterReads {
    private static final String READ = "select r.point_id, r.meter_id, r.taken_at,"
            + " (select min(d.amount) from verdict d where d.reading_id = r.id and d.replaced_at is null) as amount"
            + " from reading r where r.site_id = :siteId and r.point_id in (:points) and r.meter_id in (:meters)"
            + " and r.quantity = :quantity and r.held_as_asked = true and r.taken_at >= :from and r.taken_at <= :to"
            + " and not exists (select 1 from reading n where n.supersedes_id = r.id)"
            + " and not exists (select 1 from reading_withdrawal w where w.reading_id = r.id)"
            + " order by r.taken_at, r.id";

    private final JdbcClient database;
    private final Clock clock;

    MeterReads(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** From its beginning to its end, or until now; held as the points ask and standing, oldest first. */
    @Transactional(readOnly = true)
    List<MeterRead> of(ComparisonFacts comparison) {
        return database.sql(READ)
                .param("siteId", comparison.siteId())
                .param("points", comparison.pointIds())
                .param("meters", comparison.meterIds())
                .param("quantity", comparison.quantity().name())
                .param("from", OffsetDateTime.ofInstant(comparison.begunAt(), ZoneOffset.UTC))
                .param("to", OffsetDateTime.ofInstant(comparison.endedAt().orElse(clock.instant()), ZoneOffset.UTC))
                .query((ResultSet row, int number) -> read(row))
                .list();
    }

    private static MeterRead read(ResultSet row) throws SQLException {
        return new MeterRead(
                row.getLong("point_id"),
                row.getLong("meter_id"),
                row.getObject("taken_at", OffsetDateTime.class).toInstant(),
                row.getDouble("amount"));
    }
}
