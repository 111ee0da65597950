package dapple.enclosure;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface EnclosureRepository extends JpaRepository<Enclosure, Long> {
    String FACTS =
            "select new dapple.enclosure.EnclosureFacts(e.id, e.code, r.name, e.size) from Enclosure e join e.room r ";

    @Query(FACTS + "where e.siteId = :siteId order by r.walkingOrder, r.id, e.walkingOrder, e.id")
    List<EnclosureFacts> inWalkingOrder(long siteId);

    @Query(FACTS + "where e.siteId = :siteId and e.id = :id")
    Optional<EnclosureFacts> findFacts(long siteId, long id);
}
