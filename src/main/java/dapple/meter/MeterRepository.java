package dapple.meter;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface MeterRepository extends JpaRepository<Meter, Long> {
    @Query("select m from Meter m where m.siteId = :siteId and m.retiredAt is null order by m.id")
    List<Meter> inUse(long siteId);

    @Query("select m from Meter m where m.siteId = :siteId")
    List<Meter> all(long siteId);

    @Query("select m from Meter m where m.siteId = :siteId and m.id = :id")
    Optional<Meter> findAtSite(long siteId, long id);

    @Query(
            "select count(m) > 0 from Meter m where m.siteId = :siteId and lower(m.code) = lower(:code) and m.id <> :except")
    boolean isTaken(long siteId, String code, long except);
}
