package dapple.meter;

import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The certificates of calibrations as files: one each, never edited; a wrong one goes with its calibration. */
@Service
class Certificates {
    /** Largest file that is kept, in bytes: 5 MB. */
    static final int MOST_BYTES = 5_000_000;

    /** The most that one row holds on both databases, in bytes. */
    private static final int PART_BYTES = 1_000_000;

    private final CertificateFileRepository files;
    private final Calibrations calibrations;
    private final JdbcClient database;
    private final Clock clock;

    Certificates(CertificateFileRepository files, Calibrations calibrations, JdbcClient database, Clock clock) {
        this.files = files;
        this.calibrations = calibrations;
        this.database = database;
        this.clock = clock;
    }

    /** All calibrations of a meter with what is kept of their certificates, newest first. */
    @Transactional(readOnly = true)
    public List<CalibrationDetails> of(long siteId, long meterId) {
        List<CertificateFacts> kept = files.ofMeter(siteId, meterId).stream()
                .map(CertificateFile::facts)
                .toList();
        return calibrations.of(siteId, meterId).stream()
                .map(one -> one.with(kept.stream()
                        .filter(file -> file.calibrationId() == one.id())
                        .findFirst()))
                .toList();
    }

    /**
     * Keeps the certificate of a calibration.
     *
     * @throws TakenException if there is one already
     */
    @Transactional
    public void keep(long siteId, long meterId, long calibrationId, Filed filed) {
        calibrations.get(siteId, meterId, calibrationId);
        CertificateFacts facts = new CertificateFacts(
                calibrationId, filed.name(), filed.kind(), filed.size(), clock.instant(), filed.personId());
        try {
            long id = files.saveAndFlush(new CertificateFile(siteId, facts)).id();
            store(id, filed.content());
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("this calibration has its certificate already");
        }
    }

    private void store(long fileId, byte[] content) {
        for (int from = 0; from < content.length; from += PART_BYTES) {
            byte[] part = Arrays.copyOfRange(content, from, Math.min(content.length, from + PART_BYTES));
            database.sql("insert into certificate_part (file_id, place, content) values (:file, :place, :content)")
                    .param("file", fileId)
                    .param("place", from / PART_BYTES)
                    .param("content", part)
                    .update();
        }
    }

    @Transactional(readOnly = true)
    public Kept get(long siteId, long meterId, long calibrationId) {
        calibrations.get(siteId, meterId, calibrationId);
        CertificateFile file = files.ofCalibration(siteId, calibrationId).orElseThrow(NotFoundException::new);
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        database.sql("select content from certificate_part where file_id = :file order by place")
                .param("file", file.id())
                .query((row, number) -> row.getBytes("content"))
                .list()
                .forEach(content::writeBytes);
        return new Kept(file.facts(), content);
    }

    /** A file with its content. */
    record Kept(CertificateFacts facts, ByteArrayOutputStream content) {}
}
