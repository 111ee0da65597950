package dapple.reading;

import dapple.light.quantity.Quantity;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface LatestReadingRepository extends JpaRepository<LatestReading, Long> {
    boolean existsBySiteId(long siteId);

    Optional<LatestReading> findByPointIdAndQuantity(long pointId, Quantity quantity);
}
