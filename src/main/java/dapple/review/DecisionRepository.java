package dapple.review;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** Decisions are added, never changed. */
interface DecisionRepository extends Repository<Decision, Long> {
    Decision saveAndFlush(Decision decision);

    boolean existsByEntryKey(UUID entryKey);

    @Query("""
            select new dapple.review.Decided$Row(d, p.name) from Decision d left join Person p on p.id = d.givenTo
            where d.siteId = :siteId and d.madeAt >= :since order by d.madeAt, d.id""")
    List<Decided.Row> since(long siteId, Instant since);

    @Query("select d from Decision d where d.siteId = :siteId and d.enclosureId = :enclosureId order by d.madeAt, d.id")
    List<Decision> of(long siteId, long enclosureId);

    /** What had been decided at an instant and whose day had not passed, newest first. */
    @Query("""
            select d from Decision d where d.siteId = :siteId and d.enclosureId = :enclosureId and d.madeAt <= :at
            and (d.untilOn is null or d.untilOn >= :day) order by d.madeAt desc, d.id desc""")
    List<Decision> standing(long siteId, long enclosureId, Instant at, LocalDate day, Limit limit);

    @Query("select d from Decision d where d.siteId = :siteId and d.madeAt >= :from and d.madeAt < :to "
            + "order by d.madeAt, d.id")
    List<Decision> between(long siteId, Instant from, Instant to);
}
