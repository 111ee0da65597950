package dapple.animal;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface BodyLengthRepository extends JpaRepository<BodyLength, Long> {
    @Query("""
            select l from BodyLength l where l.siteId = :siteId and l.animalId = :animalId
            order by l.measuredOn desc, l.id desc""")
    List<BodyLength> newestFirst(long siteId, long animalId);
}
