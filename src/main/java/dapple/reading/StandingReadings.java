package dapple.reading;

import dapple.light.quantity.Quantity;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** All readings of a site that are in force: neither withdrawn nor superseded, the sensor held as asked. */
@Service
public class StandingReadings {
    private static final String STANDING =
            "select v.enclosure_id, r.point_id, r.meter_id, r.quantity, r.amount, r.taken_at"
                    + " from reading r join visit v on v.id = r.visit_id"
                    + " left join reading n on n.supersedes_id = r.id"
                    + " left join reading_withdrawal w on w.reading_id = r.id"
                    + " where r.site_id = :siteId and r.taken_at >= :from and r.held_as_asked = true"
                    + " and n.id is null and w.id is null"
                    + " order by r.taken_at, r.id";

    private final JdbcClient database;

    StandingReadings(JdbcClient database) {
        this.database = database;
    }

    /** Since an instant, oldest first. */
    @Transactional(readOnly = true)
    public List<StandingReading> since(long siteId, Instant from) {
        return database.sql(STANDING)
                .param("siteId", siteId)
                .param("from", OffsetDateTime.ofInstant(from, ZoneOffset.UTC))
                .query((ResultSet row, int at) -> reading(row))
                .list();
    }

    /** The site at which a reading was taken. */
    @Transactional(readOnly = true)
    public long siteOf(long readingId) {
        return database.sql("select site_id from reading where id = :id")
                .param("id", readingId)
                .query(Long.class)
                .single();
    }

    private static StandingReading reading(ResultSet row) throws SQLException {
        return new StandingReading(
                row.getLong("enclosure_id"),
                row.getLong("point_id"),
                row.getLong("meter_id"),
                Quantity.valueOf(row.getString("quantity")),
                row.getDouble("amount"),
                row.getObject("taken_at", OffsetDateTime.class).toInstant());
    }
}
