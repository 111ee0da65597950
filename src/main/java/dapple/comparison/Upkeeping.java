package dapple.comparison;

import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.SignedIn;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Asks in one step what is to be compared and read again at a site. */
@Service
public class Upkeeping {
    private static final String AWAY = "exists (select 1 from meter_event e where e.meter_id = m.id"
            + " and e.kind in ('LOST', 'BORROWED', 'BROKEN') and e.withdrawn_at is null and not exists"
            + " (select 1 from meter_event n where n.meter_id = e.meter_id and n.kind <> 'DROPPED'"
            + " and n.withdrawn_at is null and (n.happened_at > e.happened_at"
            + " or (n.happened_at = e.happened_at and n.id > e.id))))";

    private static final String AT_HAND = "select m.quantity as what, count(*) as number,"
            + " (select max(c.ended_at) from comparison c where c.site_id = :siteId and c.quantity = m.quantity"
            + " and c.ended_by is null) as newest,"
            + " (select min(c.id) from comparison c where c.site_id = :siteId and c.open_quantity = m.quantity)"
            + " as under_way from meter m where m.site_id = :siteId and m.retired_at is null"
            + " and m.quantity not in ('SURFACE_TEMPERATURE', 'AIR_TEMPERATURE')"
            + " and not " + AWAY + " group by m.quantity having count(*) > 1";

    private static final String WAITING =
            " union all select 'REPEATS', count(*), cast(null as timestamp with time zone)," + " cast(null as bigint) "
                    + WaitingRepeats.FROM;

    private final JdbcClient database;
    private final Clock clock;

    Upkeeping(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** What somebody may see to today; nothing is asked for who may do neither. */
    @Transactional(readOnly = true)
    public Upkeep today(SignedIn me) {
        boolean compares = me.may(Action.KEEP_METERS);
        boolean repeats = me.may(Action.LOG_READINGS) && me.settings().blindRepeats();
        if (!compares && !repeats) {
            return Upkeep.NONE;
        }
        Upkeep all = ask(me);
        LocalDate today = LocalDate.ofInstant(clock.instant(), me.zone());
        return new Upkeep(
                compares
                        ? all.comparisons().stream()
                                .filter(due -> due.isDueOn(today))
                                .toList()
                        : List.of(),
                repeats ? all.repeats() : 0);
    }

    /** Of which quantities meters are compared at all, and when each is due next. */
    @Transactional(readOnly = true)
    public List<ComparisonDue> comparisons(SignedIn me) {
        return ask(me).comparisons();
    }

    private Upkeep ask(SignedIn me) {
        Gathered gathered = new Gathered(me.zone());
        database.sql(AT_HAND + WAITING)
                .param("siteId", me.siteId())
                .param("me", me.personId())
                .param("since", OffsetDateTime.ofInstant(WaitingRepeats.since(clock.instant()), ZoneOffset.UTC))
                .query(gathered::take);
        return new Upkeep(gathered.comparisons, gathered.repeats);
    }

    private static final class Gathered {
        private final ZoneId zone;
        private final List<ComparisonDue> comparisons = new ArrayList<>();
        private long repeats;

        Gathered(ZoneId zone) {
            this.zone = zone;
        }

        void take(ResultSet row) throws SQLException {
            String what = row.getString("what");
            if ("REPEATS".equals(what)) {
                repeats = row.getLong("number");
                return;
            }
            Optional<Instant> newest = Optional.ofNullable(row.getObject("newest", OffsetDateTime.class))
                    .map(OffsetDateTime::toInstant);
            Optional<Long> underWay = Optional.ofNullable(row.getObject("under_way", Long.class));
            comparisons.add(ComparisonDue.of(Quantity.valueOf(what), newest, underWay, zone));
        }
    }
}
