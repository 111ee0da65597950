package dapple.comparison;

import dapple.light.quantity.Quantity;
import dapple.people.SignedIn;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What waits to be read again by somebody who has not read it first. */
@Component
class WaitingRepeats {
    static final String FROM = "from blind_repeat b join reading r on r.id = b.reading_id"
            + " join visit v on v.id = r.visit_id join measuring_point p on p.id = r.point_id"
            + " join enclosure e on e.id = p.enclosure_id join room o on o.id = e.room_id"
            + " join meter k on k.id = r.meter_id where b.site_id = :siteId and b.second_id is null"
            + " and r.taken_at >= :since and r.recorded_by <> :me and v.person_id <> :me"
            + " and p.retired_at is null and e.retired_at is null"
            + " and not exists (select 1 from reading_withdrawal w where w.reading_id = r.id)";

    private static final String LIST = "select e.id as enclosure_id, e.code as enclosure, o.name as room,"
            + " p.id as point_id, p.code as point, p.place, r.quantity, k.code as meter, r.taken_at " + FROM
            + " order by o.walking_order, e.walking_order, p.walking_order, b.id";

    private final JdbcClient database;
    private final Clock clock;

    WaitingRepeats(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** What was taken earlier does not wait any more at an instant. */
    static Instant since(Instant now) {
        return now.minus(WaitingRepeat.WINDOW);
    }

    /** In walking order. */
    @Transactional(readOnly = true)
    List<WaitingRepeat> forOne(SignedIn me) {
        return database.sql(LIST)
                .param("siteId", me.siteId())
                .param("me", me.personId())
                .param("since", OffsetDateTime.ofInstant(since(clock.instant()), ZoneOffset.UTC))
                .query((ResultSet row, int number) -> waiting(row))
                .list();
    }

    private static WaitingRepeat waiting(ResultSet row) throws SQLException {
        return new WaitingRepeat(
                row.getLong("enclosure_id"),
                row.getString("enclosure"),
                row.getString("room"),
                row.getLong("point_id"),
                row.getString("point"),
                row.getString("place"),
                Quantity.valueOf(row.getString("quantity")),
                row.getString("meter"),
                row.getObject("taken_at", OffsetDateTime.class).toInstant());
    }
}
