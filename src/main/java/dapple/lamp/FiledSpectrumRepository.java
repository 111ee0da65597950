package dapple.lamp;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface FiledSpectrumRepository extends JpaRepository<FiledSpectrum, Long> {
    String FILED =
            "select new dapple.lamp.SpectrumFiled(s.id, s.source, s.recordedAt, s.recordedBy, s.figures) from FiledSpectrum s ";

    /** Those that models of a site have at present. */
    @Query(FILED
            + "where s.siteId = :siteId and s.id in (select m.spectrumId from LampModel m where m.siteId = :siteId)")
    List<SpectrumFiled> standing(long siteId);

    @Query(FILED + "where s.siteId = :siteId and s.id = (select m.spectrumId from LampModel m where m.id = :modelId)")
    Optional<SpectrumFiled> ofModel(long siteId, long modelId);

    @Query("select s.content from FiledSpectrum s where s.siteId = :siteId and s.id = :id")
    Optional<String> content(long siteId, long id);
}
