package dapple.comparison;

import dapple.light.quantity.Quantity;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What was drawn to be read again over the last months. */
@Component
class RepeatsAsked {
    /** Half a year (ours): enough of one in ten to tell how well people agree. */
    static final Duration LATELY = Duration.ofDays(182);

    private static final String DRAWN = "select e.code || ' ' || p.code as place, r.quantity, k.resolution,"
            + " r.amount as first_amount, r.meter_id as first_meter, v.person_id as first_person, r.taken_at as first_at,"
            + " s.amount as second_amount, s.meter_id as second_meter, w.person_id as second_person,"
            + " s.taken_at as second_at from blind_repeat b join reading r on r.id = b.reading_id"
            + " join visit v on v.id = r.visit_id join measuring_point p on p.id = r.point_id"
            + " join enclosure e on e.id = p.enclosure_id join meter k on k.id = r.meter_id"
            + " left join reading s on s.id = b.second_id left join visit w on w.id = s.visit_id"
            + " where b.site_id = :siteId and r.taken_at >= :from"
            + " and not exists (select 1 from reading_withdrawal x where x.reading_id = r.id)"
            + " order by r.taken_at desc, b.id desc";

    private final JdbcClient database;
    private final Clock clock;

    RepeatsAsked(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** Newest first. */
    @Transactional(readOnly = true)
    List<RepeatAsked> lately(long siteId) {
        return database.sql(DRAWN)
                .param("siteId", siteId)
                .param("from", OffsetDateTime.ofInstant(clock.instant().minus(LATELY), ZoneOffset.UTC))
                .query((ResultSet row, int number) -> asked(row))
                .list();
    }

    private static RepeatAsked asked(ResultSet row) throws SQLException {
        boolean isDone = row.getObject("second_at") != null;
        return new RepeatAsked(
                row.getString("place"),
                Quantity.valueOf(row.getString("quantity")),
                row.getDouble("resolution"),
                read(row, "first"),
                isDone ? Optional.of(read(row, "second")) : Optional.empty());
    }

    private static RepeatAsked.Read read(ResultSet row, String which) throws SQLException {
        Instant at = row.getObject(which + "_at", OffsetDateTime.class).toInstant();
        return new RepeatAsked.Read(
                row.getDouble(which + "_amount"), row.getLong(which + "_meter"), row.getLong(which + "_person"), at);
    }
}
