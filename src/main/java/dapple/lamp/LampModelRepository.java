package dapple.lamp;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface LampModelRepository extends JpaRepository<LampModel, Long> {
    @Query("select m from LampModel m where m.siteId = :siteId and m.id = :id")
    Optional<LampModel> findAtSite(long siteId, long id);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select m from LampModel m where m.siteId = :siteId and m.id = :id")
    Optional<LampModel> lockAtSite(long siteId, long id);

    @Query("select m from LampModel m where m.siteId = :siteId")
    List<LampModel> all(long siteId);

    @Query(
            "select count(m) > 0 from LampModel m where m.siteId = :siteId and lower(m.name) = lower(:name) and m.id <> :except")
    boolean isTaken(long siteId, String name, long except);
}
