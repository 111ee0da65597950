package dapple.meter;

import java.time.Instant;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface CalibrationRepository extends JpaRepository<Calibration, Long> {
    @Query("""
            select c from Calibration c where c.meterId = :meterId and c.calibratedAt <= :at
            order by c.calibratedAt desc, c.id desc""")
    List<Calibration> newestFirst(long meterId, Instant at, Limit limit);
}
