package dapple.lamp;

import java.time.Instant;

/**
 * A photometric file on record.
 *
 * @param source where it is from, in words
 */
record PhotometryFiled(long id, String source, String content, Instant recordedAt, long recordedBy) {}
