package dapple.reading;

import dapple.light.quantity.Quantity;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The newest readings of every point of some enclosures, however long the record is. */
@Service
public class RecentReadings {
    private static final String QUANTITIES = Arrays.stream(Quantity.values())
            .map(quantity -> "('" + quantity.name() + "')")
            .collect(Collectors.joining(", "));

    private static final String STANDING = ".held_as_asked = true"
            + " and not exists (select 1 from reading n where n.supersedes_id = %1$s.id)"
            + " and not exists (select 1 from reading_withdrawal w where w.reading_id = %1$s.id)";

    /** Some steps of the index for each point and quantity. */
    private static final String NEWEST = "select p.enclosure_id, r.point_id, r.quantity, r.taken_at,"
            + " (select min(d.amount) from verdict d where d.reading_id = r.id and d.replaced_at is null) as amount"
            + " from measuring_point p cross join (values " + QUANTITIES + ") as q (quantity)"
            + " join reading r on r.point_id = p.id and r.quantity = q.quantity and r" + STANDING.formatted("r")
            + " and r.taken_at >= coalesce((select x.taken_at from reading x"
            + " where x.point_id = p.id and x.quantity = q.quantity and x" + STANDING.formatted("x")
            + " order by x.taken_at desc offset :before rows fetch first 1 rows only), :epoch)"
            + " where p.site_id = :siteId and p.enclosure_id in (:enclosureIds)"
            + " order by r.taken_at desc, r.id desc";

    private static final OffsetDateTime EPOCH = OffsetDateTime.of(1900, 1, 1, 0, 0, 0, 0, ZoneOffset.UTC);

    private final JdbcClient database;

    RecentReadings(JdbcClient database) {
        this.database = database;
    }

    /**
     * The newest of each point and quantity that stand and were held as asked, newest first.
     *
     * @param most how many of each, above 0
     */
    @Transactional(readOnly = true)
    public List<RecentReading> in(long siteId, Collection<Long> enclosureIds, int most) {
        return enclosureIds.isEmpty()
                ? List.of()
                : database.sql(NEWEST)
                        .param("siteId", siteId)
                        .param("enclosureIds", enclosureIds)
                        .param("before", most - 1)
                        .param("epoch", EPOCH)
                        .query((ResultSet row, int at) -> reading(row))
                        .list();
    }

    private static RecentReading reading(ResultSet row) throws SQLException {
        return new RecentReading(
                row.getLong("enclosure_id"),
                row.getLong("point_id"),
                Quantity.valueOf(row.getString("quantity")),
                row.getDouble("amount"),
                row.getObject("taken_at", OffsetDateTime.class).toInstant());
    }
}
