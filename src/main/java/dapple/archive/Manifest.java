package dapple.archive;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * What an archive says of itself.
 *
 * @param format of the archive; what reads one format refuses a later one
 * @param schema newest migration of the database that it was made of
 * @param sites names of the sites in it
 * @param from first instant of a year's record
 * @param to first instant after it
 * @param madeBy who asked for it
 * @param writtenInMillis how long writing took
 * @param rows how many rows each table has
 * @param sha256 the sum of each other entry, by name
 */
record Manifest(
        String program,
        int format,
        String schema,
        ArchiveKind kind,
        List<String> sites,
        Optional<Instant> from,
        Optional<Instant> to,
        Instant madeAt,
        String madeBy,
        long writtenInMillis,
        Map<String, Long> rows,
        Map<String, String> sha256) {

    static final String ENTRY = "manifest.json";
    static final String PROGRAM = "Dapple";
    static final int FORMAT = 1;

    private static final JsonMapper JSON = JsonMapper.builder().build();

    Manifest {
        sites = List.copyOf(sites);
        rows = Collections.unmodifiableSortedMap(new TreeMap<>(rows));
        sha256 = Collections.unmodifiableSortedMap(new TreeMap<>(sha256));
        if (schema.isBlank() || madeBy.isBlank()) {
            throw new IllegalArgumentException("a manifest must say its schema and who made it");
        }
    }

    byte[] json() {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(this);
    }

    /** What a file's text says; empty where it is no manifest. */
    static Optional<Manifest> of(byte[] json) {
        try {
            return Optional.of(JSON.readValue(json, Manifest.class));
        } catch (JacksonException | NullPointerException | IllegalArgumentException otherwise) {
            return Optional.empty();
        }
    }

    long allRows() {
        return rows.values().stream().mapToLong(Long::longValue).sum();
    }
}
