package dapple.door;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface DoorRepository extends Repository<Door, Long> {
    Door saveAndFlush(Door door);

    boolean existsByCode(String code);

    @Query("select d from Door d where d.siteId = :siteId and d.openEnclosureId is not null")
    List<Door> open(long siteId);

    @Query("select d from Door d where d.siteId = :siteId and d.openEnclosureId in :enclosureIds")
    List<Door> openOf(long siteId, Collection<Long> enclosureIds);

    @Query("select d from Door d where d.siteId = :siteId and d.enclosureId = :enclosureId order by d.id desc")
    List<Door> ofEnclosure(long siteId, long enclosureId);

    @Query("select d from Door d where d.siteId = :siteId and d.code = :code")
    Optional<Door> findAtSite(long siteId, String code);
}
