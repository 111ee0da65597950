package dapple.round;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface RoundPlanRepository extends JpaRepository<RoundPlan, Long> {
    @Query("select p from RoundPlan p where p.siteId = :siteId and p.id = :id")
    Optional<RoundPlan> findAtSite(long siteId, long id);

    /** Locked until the end of the transaction: what is said of its walks is said one at a time. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select p from RoundPlan p where p.siteId = :siteId and p.id = :id")
    Optional<RoundPlan> lockAtSite(long siteId, long id);

    @Query("""
            select count(p) > 0 from RoundPlan p
            where p.siteId = :siteId and lower(p.title) = lower(:title) and p.id <> :except""")
    boolean isTaken(long siteId, String title, long except);

    @Query("select p from RoundPlan p where p.siteId = :siteId order by p.id")
    List<RoundPlan> all(long siteId);
}
