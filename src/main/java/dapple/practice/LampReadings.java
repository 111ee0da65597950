package dapple.practice;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What all meters of a site showed under their reference lamps. */
@Service
public class LampReadings {
    private static final String SHOWN = "select lamp_id, meter_id, amount, moment from ("
            + "select l.id as lamp_id, l.meter_id, l.first_amount as amount, l.first_at as moment"
            + " from reference_lamp l where l.site_id = :siteId"
            + " union all select c.reference_lamp_id, c.meter_id, c.amount, c.checked_at"
            + " from meter_check c where c.site_id = :siteId and c.reference_lamp_id is not null"
            + ") shown where moment >= :from order by moment, lamp_id";

    private final JdbcClient database;

    LampReadings(JdbcClient database) {
        this.database = database;
    }

    /** First values and checks since an instant, oldest first. */
    @Transactional(readOnly = true)
    public List<LampReading> since(long siteId, Instant from) {
        return database.sql(SHOWN)
                .param("siteId", siteId)
                .param("from", OffsetDateTime.ofInstant(from, ZoneOffset.UTC))
                .query((ResultSet row, int at) -> reading(row))
                .list();
    }

    private static LampReading reading(ResultSet row) throws SQLException {
        return new LampReading(
                row.getLong("lamp_id"),
                row.getLong("meter_id"),
                row.getDouble("amount"),
                row.getObject("moment", OffsetDateTime.class).toInstant());
    }
}
