package dapple.lamp;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface FiledSpectrumRepository extends JpaRepository<FiledSpectrum, Long> {
    String FILED =
            "select new dapple.lamp.SpectrumFiled(s.id, s.source, s.recordedAt, s.recordedBy, s.figures) from FiledSpectrum s ";

    @Query(FILED + "where s.siteId = :siteId and s.id = (select m.spectrumId from LampModel m where m.id = :modelId)")
    Optional<SpectrumFiled> ofModel(long siteId, long modelId);

    @Query("select s.content from FiledSpectrum s where s.siteId = :siteId and s.id = :id")
    Optional<String> content(long siteId, long id);
}
