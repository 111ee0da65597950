package dapple.animal;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Stays; only the record of one animal shows withdrawn ones. */
interface StayRepository extends JpaRepository<Stay, Long> {
    String HOUSED = "select new dapple.animal.Housed("
            + "s.enclosureId, s.fromAt, a, p.id, p.scientificName, p.commonName, p.version) "
            + "from Stay s join s.animal a join Species p on p.id = a.speciesId ";
    String AT = "and s.withdrawnAt is null and s.fromAt <= :at and (s.toAt is null or s.toAt > :at) ";

    @Query("select s from Stay s where s.openAnimalId = :animalId")
    Optional<Stay> open(long animalId);

    @Query("select max(s.toAt) from Stay s where s.animal.id = :animalId and s.withdrawnAt is null")
    Optional<Instant> lastEnd(long animalId);

    @Query("""
            select s from Stay s join fetch s.animal where s.siteId = :siteId and s.animal.id = :animalId
            and s.withdrawnAt is null order by s.fromAt""")
    List<Stay> ofAnimal(long siteId, long animalId);

    @Query("""
            select s from Stay s join fetch s.animal where s.siteId = :siteId and s.animal.id = :animalId
            order by s.fromAt desc, s.id desc""")
    List<Stay> recordOfAnimal(long siteId, long animalId);

    @Query("""
            select s from Stay s join fetch s.animal
            where s.siteId = :siteId and s.animal.id = :animalId and s.id = :stayId""")
    Optional<Stay> findOfAnimal(long siteId, long animalId, long stayId);

    @Query("select s from Stay s where s.animal.id = :animalId " + AT)
    Optional<Stay> ofAnimalAt(long animalId, Instant at);

    @Query(HOUSED + "where s.siteId = :siteId " + AT + "order by a.id")
    List<Housed> at(long siteId, Instant at);

    @Query(HOUSED + "where s.siteId = :siteId and s.enclosureId = :enclosureId " + AT + "order by a.id")
    List<Housed> at(long siteId, long enclosureId, Instant at);

    @Query("select s from Stay s join fetch s.animal a where s.siteId = :siteId and s.enclosureId = :enclosureId " + AT
            + "order by a.id")
    List<Stay> inEnclosureAt(long siteId, long enclosureId, Instant at);

    /** With the newest length of each. */
    @Query("select new dapple.animal.Occupant(a, p.scientificName, l.metres, l.measuredOn) from Stay s join s.animal a "
            + "join Species p on p.id = a.speciesId left join BodyLength l on l.animalId = a.id and not exists "
            + "(select 1 from BodyLength n where n.animalId = a.id and (n.measuredOn > l.measuredOn "
            + "or (n.measuredOn = l.measuredOn and n.id > l.id))) "
            + "where s.siteId = :siteId and s.enclosureId = :enclosureId " + AT + "order by a.id")
    List<Occupant> occupantsAt(long siteId, long enclosureId, Instant at);

    @Query("select s from Stay s join fetch s.animal where s.siteId = :siteId and s.openAnimalId in :animalIds")
    List<Stay> openOf(long siteId, Collection<Long> animalIds);

    /**
     * The stays in an enclosure that held at an instant, and those that were on record then: withdrawn since, or ended
     * before it by what was recorded after it.
     */
    @Query("""
            select s from Stay s join fetch s.animal a where s.siteId = :siteId and s.enclosureId = :enclosureId
            and s.fromAt <= :at and (s.withdrawnAt is null or s.withdrawnAt > :at)
            and (s.toAt is null or s.toAt > :at
              or exists (select 1 from Stay n where n.animal.id = a.id and n.fromAt = s.toAt and n.withdrawnAt is null
                and n.recordedAt > :at)
              or exists (select 1 from AnimalEvent e where e.animalId = a.id and e.at = s.toAt and e.recordedAt > :at))
            order by a.accessionNumber, s.id""")
    List<Stay> onRecord(long siteId, long enclosureId, Instant at);

    @Query("""
            select s.fromAt from Stay s where s.siteId = :siteId and s.enclosureId = :enclosureId and s.withdrawnAt is null
            union select s.toAt from Stay s
            where s.siteId = :siteId and s.enclosureId = :enclosureId and s.withdrawnAt is null and s.toAt is not null""")
    List<Instant> turns(long siteId, long enclosureId);

    /** What held at any time in [from, to). */
    @Query("select s from Stay s join fetch s.animal where s.siteId = :siteId and s.withdrawnAt is null "
            + "and s.fromAt < :to and (s.toAt is null or s.toAt > :from) order by s.fromAt, s.id")
    List<Stay> during(long siteId, Instant from, Instant to);

    @Query("select s from Stay s join fetch s.animal where s.siteId = :siteId "
            + "and s.withdrawnAt >= :from and s.withdrawnAt < :to order by s.withdrawnAt, s.id")
    List<Stay> withdrawn(long siteId, Instant from, Instant to);
}
