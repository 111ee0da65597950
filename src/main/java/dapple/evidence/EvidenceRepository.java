package dapple.evidence;

import dapple.species.LightMethod;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface EvidenceRepository extends JpaRepository<Evidence, Long> {
    @Query("select e from Evidence e where e.siteId = :siteId and e.speciesId = :speciesId order by e.id")
    List<Evidence> of(long siteId, long speciesId);

    @Query("select e from Evidence e where e.siteId = :siteId and e.speciesId = :speciesId and e.id = :id")
    Optional<Evidence> find(long siteId, long speciesId, long id);

    @Query("select count(e) > 0 from Evidence e where e.speciesId = :speciesId and e.uvZone = :uvZone"
            + " and e.method = :method and e.source = :source")
    boolean isOnRecord(long speciesId, int uvZone, LightMethod method, String source);
}
