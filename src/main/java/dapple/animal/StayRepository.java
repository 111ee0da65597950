package dapple.animal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface StayRepository extends JpaRepository<Stay, Long> {
    @Query("select s from Stay s where s.openAnimalId = :animalId")
    Optional<Stay> open(long animalId);

    @Query("select max(s.toAt) from Stay s where s.animal.id = :animalId")
    Optional<Instant> lastEnd(long animalId);

    @Query(
            "select s from Stay s join fetch s.animal where s.siteId = :siteId and s.animal.id = :animalId order by s.fromAt")
    List<Stay> ofAnimal(long siteId, long animalId);

    @Query("""
            select s from Stay s join fetch s.animal a
            where s.siteId = :siteId and s.fromAt <= :at and (s.toAt is null or s.toAt > :at) order by a.id""")
    List<Stay> at(long siteId, Instant at);

    @Query("""
            select s from Stay s join fetch s.animal a where s.siteId = :siteId and s.enclosureId = :enclosureId
            and s.fromAt <= :at and (s.toAt is null or s.toAt > :at) order by a.id""")
    List<Stay> inEnclosureAt(long siteId, long enclosureId, Instant at);
}
