package dapple.animal;

import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface AnimalRepository extends JpaRepository<Animal, Long> {
    @Query("select a from Animal a where a.siteId = :siteId and a.id = :id")
    Optional<Animal> findAtSite(long siteId, long id);

    @Query("select a from Animal a where a.siteId = :siteId and a.id in :ids")
    List<Animal> findAllAtSite(long siteId, Collection<Long> ids);

    /** The animal, locked until the end of the transaction: its stays change one at a time. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select a from Animal a where a.siteId = :siteId and a.id = :id")
    Optional<Animal> lockAtSite(long siteId, long id);

    @Query("select a from Animal a where a.siteId = :siteId order by a.accessionNumber, a.id")
    List<Animal> all(long siteId);

    @Query("select a from Animal a where a.siteId = :siteId and a.endedAt is null order by a.accessionNumber, a.id")
    List<Animal> here(long siteId);

    @Query(
            "select count(a) > 0 from Animal a where a.siteId = :siteId and lower(a.accessionNumber) = lower(:accessionNumber) and a.id <> :except")
    boolean isTaken(long siteId, String accessionNumber, long except);

    @Query("""
            select a from Animal a where a.siteId = :siteId
            and (lower(a.name) like :pattern escape '!' or lower(a.accessionNumber) like :pattern escape '!')
            and (:speciesId = 0L or a.speciesId = :speciesId)
            and (:enclosureId = 0L or exists (select 1 from Stay s
              where s.openAnimalId = a.id and s.enclosureId = :enclosureId))
            and (:shown = 'ALL' or (:shown = 'HERE' and a.endedAt is null) or (:shown = 'GONE' and a.endedAt is not null))
            order by a.accessionNumber, a.id""")
    Page<Animal> found(long siteId, String pattern, long speciesId, long enclosureId, String shown, Pageable page);

    /** An animal with its stays that were not withdrawn, oldest first; one row without a stay if there is none. */
    @Query("select new dapple.animal.Chapter(a, p.id, p.scientificName, p.commonName, p.version, s) "
            + "from Animal a join Species p on p.id = a.speciesId "
            + "left join Stay s on s.animal = a and s.withdrawnAt is null "
            + "where a.siteId = :siteId and a.id = :animalId order by s.fromAt")
    List<Chapter> chapters(long siteId, long animalId);
}
