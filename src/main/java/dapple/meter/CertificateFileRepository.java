package dapple.meter;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface CertificateFileRepository extends Repository<CertificateFile, Long> {
    CertificateFile saveAndFlush(CertificateFile file);

    @Query("select f from CertificateFile f where f.siteId = :siteId and f.calibrationId = :calibrationId")
    Optional<CertificateFile> ofCalibration(long siteId, long calibrationId);

    @Query("""
            select f from CertificateFile f join Calibration c on c.id = f.calibrationId
            where f.siteId = :siteId and c.meterId = :meterId""")
    List<CertificateFile> ofMeter(long siteId, long meterId);
}
