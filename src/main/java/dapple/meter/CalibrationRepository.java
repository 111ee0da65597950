package dapple.meter;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface CalibrationRepository extends JpaRepository<Calibration, Long> {
    @Query("""
            select c from Calibration c where c.meterId = :meterId and c.openCalibratedAt <= :at
            order by c.openCalibratedAt desc, c.id desc""")
    List<Calibration> newestFirst(long meterId, Instant at, Limit limit);

    /** The newest of each meter at an instant; of several from one instant the one entered last comes first. */
    @Query("""
            select c from Calibration c where c.siteId = :siteId and c.openCalibratedAt = (
              select max(n.openCalibratedAt) from Calibration n where n.meterId = c.meterId and n.openCalibratedAt <= :at)
            order by c.id desc""")
    List<Calibration> inForceAt(long siteId, Instant at);

    /** All of a site's meters that hold. */
    @Query("select c from Calibration c where c.siteId = :siteId and c.openCalibratedAt is not null order by c.id")
    List<Calibration> holding(long siteId);

    /** With those that were withdrawn. */
    @Query("""
            select c from Calibration c where c.siteId = :siteId and c.meterId = :meterId
            order by c.calibratedAt desc, c.id desc""")
    List<Calibration> ofMeter(long siteId, long meterId);

    @Query("select c from Calibration c where c.siteId = :siteId and c.meterId = :meterId and c.id = :id")
    Optional<Calibration> findOfMeter(long siteId, long meterId, long id);

    @Query("select count(c) > 0 from Calibration c where c.meterId = :meterId and c.openCalibratedAt = :at")
    boolean isTaken(long meterId, Instant at);

    /** How many were withdrawn: none, if somebody was quicker. */
    @Modifying(clearAutomatically = true)
    @Query("""
            update Calibration c
            set c.withdrawnAt = :at, c.withdrawnBy = :personId, c.withdrawalReason = :reason, c.openCalibratedAt = null
            where c.id = :id and c.withdrawnAt is null""")
    int withdraw(long id, Instant at, long personId, String reason);

    @Query(
            "select distinct c.openCalibratedAt from Calibration c where c.siteId = :siteId and c.openCalibratedAt is not null")
    List<Instant> turns(long siteId);
}
