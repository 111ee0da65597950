package dapple.animal;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface AnimalRepository extends JpaRepository<Animal, Long> {
    @Query("select a from Animal a where a.siteId = :siteId and a.id = :id")
    Optional<Animal> findAtSite(long siteId, long id);

    /** The animal, locked until the end of the transaction: its stays change one at a time. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select a from Animal a where a.siteId = :siteId and a.id = :id")
    Optional<Animal> lockAtSite(long siteId, long id);

    @Query("select a from Animal a where a.siteId = :siteId order by a.accessionNumber, a.id")
    List<Animal> all(long siteId);
}
