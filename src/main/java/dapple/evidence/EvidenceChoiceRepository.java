package dapple.evidence;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface EvidenceChoiceRepository extends JpaRepository<EvidenceChoice, Long> {
    @Query("select c from EvidenceChoice c join fetch c.evidence where c.siteId = :siteId"
            + " and c.speciesId = :speciesId order by c.number desc")
    List<EvidenceChoice> newestFirst(long siteId, long speciesId);

    @Query("""
            select c from EvidenceChoice c join fetch c.evidence where c.siteId = :siteId and c.number =
              (select max(n.number) from EvidenceChoice n where n.speciesId = c.speciesId)""")
    List<EvidenceChoice> holding(long siteId);
}
