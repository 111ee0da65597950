package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface LatestReadingRepository extends JpaRepository<LatestReading, Long> {
    Optional<LatestReading> findByPointIdAndQuantity(long pointId, Quantity quantity);

    @Query("select new dapple.reading.LatestReadingRepository$Since(l.readingId, l.stateSince) "
            + "from LatestReading l where l.siteId = :siteId")
    List<Since> since(long siteId);

    /** Since when a point has been in the state that its newest reading shows. */
    record Since(long readingId, Instant at) {}
}
