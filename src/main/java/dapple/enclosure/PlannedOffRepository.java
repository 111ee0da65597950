package dapple.enclosure;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface PlannedOffRepository extends JpaRepository<PlannedOff, Long> {
    @Query("""
            select o from PlannedOff o
            where o.siteId = :siteId and o.fromAt <= :at and (o.toAt is null or o.toAt > :at)""")
    List<PlannedOff> at(long siteId, Instant at);
}
