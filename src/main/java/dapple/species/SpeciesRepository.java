package dapple.species;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface SpeciesRepository extends JpaRepository<Species, Long> {
    @Query("select s from Species s where s.siteId = :siteId")
    List<Species> all(long siteId);

    @Query("select s from Species s where s.siteId = :siteId and s.id = :id")
    Optional<Species> findAtSite(long siteId, long id);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select s from Species s where s.siteId = :siteId and s.id = :id")
    Optional<Species> lockAtSite(long siteId, long id);

    @Query("select count(s) > 0 from Species s where s.siteId = :siteId"
            + " and lower(s.scientificName) = lower(:scientificName) and s.id <> :except")
    boolean isTaken(long siteId, String scientificName, long except);
}
