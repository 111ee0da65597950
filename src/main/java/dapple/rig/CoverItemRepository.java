package dapple.rig;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface CoverItemRepository extends JpaRepository<CoverItem, Long> {
    String WITH_CHANGES =
            "select c from CoverItem c join fetch c.begun left join fetch c.ended e left join fetch c.passing ";
    String IN_FORCE = " and c.fromAt <= :at and (c.toAt is null or c.toAt > :at) order by c.id";

    @Query("select c from CoverItem c where c.siteId = :siteId and c.enclosureId = :enclosureId and c.id = :id")
    Optional<CoverItem> find(long siteId, long enclosureId, long id);

    @Query(WITH_CHANGES + "where c.siteId = :siteId and c.enclosureId = :enclosureId" + IN_FORCE)
    List<CoverItem> inEnclosure(long siteId, long enclosureId, Instant at);

    @Query(WITH_CHANGES + "where c.siteId = :siteId" + IN_FORCE)
    List<CoverItem> atSite(long siteId, Instant at);

    /** What held at an instant, and what had ended by then without anybody having said so. */
    @Query(WITH_CHANGES + "where c.siteId = :siteId and c.enclosureId = :enclosureId and c.fromAt <= :at "
            + "and (c.toAt is null or c.toAt > :at or e.recordedAt > :at) order by c.id")
    List<CoverItem> onRecord(long siteId, long enclosureId, Instant at);
}
