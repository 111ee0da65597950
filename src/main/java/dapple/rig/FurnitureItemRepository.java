package dapple.rig;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface FurnitureItemRepository extends JpaRepository<FurnitureItem, Long> {
    String WITH_CHANGES = "select f from FurnitureItem f join fetch f.begun left join fetch f.ended e ";
    String IN_FORCE = " and f.fromAt <= :at and (f.toAt is null or f.toAt > :at) order by f.id";

    @Query("select f from FurnitureItem f where f.siteId = :siteId and f.enclosureId = :enclosureId and f.id = :id")
    Optional<FurnitureItem> find(long siteId, long enclosureId, long id);

    @Query(WITH_CHANGES + "where f.siteId = :siteId and f.enclosureId = :enclosureId" + IN_FORCE)
    List<FurnitureItem> inEnclosure(long siteId, long enclosureId, Instant at);

    @Query(WITH_CHANGES + "where f.siteId = :siteId" + IN_FORCE)
    List<FurnitureItem> atSite(long siteId, Instant at);

    /** What held at an instant, and what had ended by then without anybody having said so. */
    @Query(WITH_CHANGES + "where f.siteId = :siteId and f.enclosureId = :enclosureId and f.fromAt <= :at "
            + "and (f.toAt is null or f.toAt > :at or e.recordedAt > :at) order by f.id")
    List<FurnitureItem> onRecord(long siteId, long enclosureId, Instant at);
}
