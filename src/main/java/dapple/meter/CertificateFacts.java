package dapple.meter;

import java.time.Instant;

/** A certificate that is kept as a file. */
public record CertificateFacts(
        long calibrationId, String name, CertificateKind kind, int sizeBytes, Instant recordedAt, long recordedBy) {
    /** To the next full kilobyte. */
    public int kilobytes() {
        return (sizeBytes + 999) / 1000;
    }
}
