package dapple.lamp;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface FiledPhotometryRepository extends JpaRepository<FiledPhotometry, Long> {
    /** The one that a model has at present. */
    @Query("select new dapple.lamp.PhotometryFiled(p.id, p.source, p.content, p.recordedAt, p.recordedBy)"
            + " from FiledPhotometry p where p.siteId = :siteId"
            + " and p.id = (select m.photometryId from LampModel m where m.id = :modelId)")
    Optional<PhotometryFiled> ofModel(long siteId, long modelId);
}
