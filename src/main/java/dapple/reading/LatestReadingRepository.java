package dapple.reading;

import dapple.light.quantity.Quantity;
import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;

interface LatestReadingRepository extends JpaRepository<LatestReading, Long> {
    boolean existsBySiteId(long siteId);

    /** Waits for whoever writes it: while visits are judged one after the other, others would lose against that time and again. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    Optional<LatestReading> findByPointIdAndQuantity(long pointId, Quantity quantity);
}
