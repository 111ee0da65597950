package dapple.comparison;

import dapple.light.quantity.Quantity;
import dapple.reading.ReadingLogged;
import dapple.reading.ReadingWithdrawn;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Draws readings to be read again, and finds what somebody else has read again; both as readings are stored. */
@Service
public class BlindRepeats {
    private static final String STORED = "select r.site_id, r.entry_key, r.supersedes_id, r.point_id, r.quantity,"
            + " r.amount, r.taken_at, r.recorded_by, r.held_as_asked, v.person_id,"
            + " coalesce(s.blind_repeats, false) as asked from reading r join visit v on v.id = r.visit_id"
            + " left join site_settings s on s.site_id = r.site_id where r.id = :id";

    private static final String ANSWERED = "select b.id from blind_repeat b join reading r on r.id = b.reading_id"
            + " join visit v on v.id = r.visit_id where b.site_id = :siteId and b.second_id is null"
            + " and r.point_id = :pointId and r.quantity = :quantity and r.taken_at >= :since and r.taken_at <= :at"
            + " and r.recorded_by not in (:people) and v.person_id not in (:people)"
            + " and not exists (select 1 from reading_withdrawal w where w.reading_id = r.id)"
            + " order by r.taken_at desc, b.id desc fetch first 1 rows only";

    private final JdbcClient database;
    private final RepeatSeeds seeds;
    private final Clock clock;

    BlindRepeats(JdbcClient database, RepeatSeeds seeds, Clock clock) {
        this.database = database;
        this.seeds = seeds;
        this.clock = clock;
    }

    /** What answers another's reading is not drawn itself; a corrected one stands in the place of the mistyped. */
    @EventListener
    @Transactional
    public void take(ReadingLogged logged) {
        Stored stored = database.sql(STORED)
                .param("id", logged.readingId())
                .query((ResultSet row, int number) -> stored(row))
                .single();
        if (stored.supersedes().isPresent()) {
            follow(stored.supersedes().get(), logged.readingId());
        } else if (stored.isMeant()) {
            answered(stored)
                    .ifPresentOrElse(
                            repeat -> answer(repeat, logged.readingId()), () -> draw(stored, logged.readingId()));
        }
    }

    /** What was withdrawn answers nothing: the first waits again, as long as its time lasts. */
    @EventListener
    @Transactional
    public void forget(ReadingWithdrawn withdrawn) {
        database.sql("update blind_repeat set second_id = null where second_id = :id")
                .param("id", withdrawn.readingId())
                .update();
    }

    private void follow(long before, long corrected) {
        for (String column : List.of("reading_id", "second_id")) {
            database.sql("update blind_repeat set " + column + " = :corrected where " + column + " = :before")
                    .param("corrected", corrected)
                    .param("before", before)
                    .update();
        }
    }

    private Optional<Long> answered(Stored stored) {
        return database.sql(ANSWERED)
                .param("siteId", stored.siteId())
                .param("pointId", stored.pointId())
                .param("quantity", stored.quantity().name())
                .param("since", OffsetDateTime.ofInstant(WaitingRepeats.since(stored.takenAt()), ZoneOffset.UTC))
                .param("at", OffsetDateTime.ofInstant(stored.takenAt(), ZoneOffset.UTC))
                .param("people", stored.people())
                .query(Long.class)
                .optional();
    }

    private void answer(long repeat, long readingId) {
        database.sql("update blind_repeat set second_id = :second where id = :id and second_id is null")
                .param("second", readingId)
                .param("id", repeat)
                .update();
    }

    private void draw(Stored stored, long readingId) {
        boolean isLate = stored.takenAt().isBefore(WaitingRepeats.since(clock.instant()));
        if (!isLate && stored.amount() > 0 && seeds.of(stored.siteId()).takes(stored.key())) {
            database.sql("insert into blind_repeat (site_id, reading_id) values (:siteId, :readingId)")
                    .param("siteId", stored.siteId())
                    .param("readingId", readingId)
                    .update();
        }
    }

    private static Stored stored(ResultSet row) throws SQLException {
        return new Stored(
                row.getLong("site_id"),
                row.getObject("entry_key", UUID.class),
                Optional.ofNullable(row.getObject("supersedes_id", Long.class)),
                row.getLong("point_id"),
                Quantity.valueOf(row.getString("quantity")),
                row.getDouble("amount"),
                row.getObject("taken_at", OffsetDateTime.class).toInstant(),
                List.of(row.getLong("recorded_by"), row.getLong("person_id")),
                row.getBoolean("asked") && row.getBoolean("held_as_asked"));
    }

    /**
     * A reading as it was stored just now.
     *
     * @param people who took it and who wrote it down
     * @param isAsked whether the site asks for repeats, and the sensor was held as the point asks
     */
    private record Stored(
            long siteId,
            UUID key,
            Optional<Long> supersedes,
            long pointId,
            Quantity quantity,
            double amount,
            Instant takenAt,
            List<Long> people,
            boolean isAsked) {
        /** A ratio of temperatures in °C says nothing. */
        boolean isMeant() {
            return isAsked && !quantity.isTemperature();
        }
    }
}
