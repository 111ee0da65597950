package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not as it was written is found before anything is taken in. */
class ArchiveFileTest {
    /** SHA-256 of the three letters abc [FIPS 180-2, appendix B.1]; copied from memory. */
    private static final String SUM_OF_ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private static final String TABLE = "tables/site.csv";

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void write() throws IOException {
        file = folder.resolve("archive.zip");
        Tampered.write(manifest(Manifest.FORMAT, Map.of()), Map.of(TABLE, bytes("abc")), file);
    }

    @Test
    void theSumsAreThoseOfTheStandard() throws IOException {
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            assertThat(archive.manifest().sha256()).containsEntry(TABLE, SUM_OF_ABC);
        }
    }

    @Test
    void whatIsAsItWasWrittenPasses() {
        assertThat(fault(file)).isEmpty();
    }

    @Test
    void aCutFileIsRefused() throws IOException {
        byte[] all = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(all, all.length - 30));
        assertThat(fault(file)).contains(ArchiveFault.CUT);
    }

    @Test
    void anEmptyFileIsRefused() throws IOException {
        Files.write(file, new byte[0]);
        assertThat(fault(file)).contains(ArchiveFault.CUT);
    }

    @Test
    void aMissingFileIsRefused() {
        assertThat(fault(folder.resolve("nowhere.zip"))).contains(ArchiveFault.NO_FILE);
    }

    /** Each byte of the compressed table in turn. */
    @Test
    void anAlteredByteIsRefused() throws IOException {
        byte[] all = Files.readAllBytes(file);
        int content = new String(all, StandardCharsets.ISO_8859_1).indexOf(TABLE) + TABLE.length();
        for (int place = content; place < content + 5; place++) {
            byte[] altered = all.clone();
            altered[place] ^= 1;
            Files.write(file, altered);
            assertThat(fault(file)).as("byte " + place).contains(ArchiveFault.ALTERED);
        }
    }

    @Test
    void aTableThatWasWrittenAnewIsRefused() throws IOException {
        copy(Map.of(TABLE, bytes("abd")));
        assertThat(fault(file)).contains(ArchiveFault.ALTERED);
    }

    @Test
    void anEntryThatTheManifestDoesNotNameIsRefused() throws IOException {
        copy(Map.of("../../etc/cron.d/evil", bytes("x")));
        assertThat(fault(file)).contains(ArchiveFault.ALTERED);
    }

    @Test
    void aMissingEntryIsRefused() throws IOException {
        Tampered.write(
                manifest(Manifest.FORMAT, Map.of()), Map.of(TABLE, bytes("abc"), "tables/room.csv", bytes("")), file);
        copyWithout("tables/room.csv");
        assertThat(fault(file)).contains(ArchiveFault.ALTERED);
    }

    /** A manifest that names a path leads nowhere: nothing is ever unpacked. */
    @Test
    void aPathInACellIsLookedForAmongTheEntriesAlone() throws IOException {
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            assertThatThrownBy(() -> archive.bytes("../../etc/passwd")).isInstanceOf(ArchiveRefusedException.class);
        }
    }

    @Test
    void aLaterFormatIsRefused() throws IOException {
        Tampered.write(manifest(Manifest.FORMAT + 1, Map.of()), Map.of(TABLE, bytes("abc")), file);
        assertThat(fault(file)).contains(ArchiveFault.NEWER);
    }

    @Test
    void anotherZipIsRefused() throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry("holiday.jpg"));
            zip.write(1);
        }
        assertThat(fault(file)).contains(ArchiveFault.STRANGE);
    }

    @Test
    void aManifestThatIsNoneIsRefused() throws IOException {
        copy(Map.of(Manifest.ENTRY, bytes("{\"program\":\"Dapple\"}")));
        assertThat(fault(file)).contains(ArchiveFault.STRANGE);
    }

    @Test
    void aManifestIsReadAsItWasWritten() {
        Manifest manifest = manifest(Manifest.FORMAT, Map.of("a", "b"));
        assertThat(Manifest.of(manifest.json())).contains(manifest);
    }

    private static Manifest manifest(int format, Map<String, String> sums) {
        return new Manifest(
                Manifest.PROGRAM,
                format,
                "040",
                ArchiveKind.YEAR,
                List.of("Larkmoor"),
                Optional.of(Instant.parse("2025-01-01T00:00:00Z")),
                Optional.of(Instant.parse("2026-01-01T00:00:00Z")),
                Instant.parse("2026-11-27T04:00:00.000001Z"),
                "Ada",
                12,
                Map.of("site", 1L),
                sums);
    }

    private static Optional<ArchiveFault> fault(Path file) {
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            archive.check();
            return Optional.empty();
        } catch (ArchiveRefusedException refused) {
            return Optional.of(refused.fault());
        } catch (IOException unread) {
            throw new AssertionError(unread);
        }
    }

    /** The same file with entries replaced or added, and the sums of before. */
    private void copy(Map<String, byte[]> otherwise) throws IOException {
        Map<String, byte[]> entries = entries();
        entries.putAll(otherwise);
        write(entries);
    }

    private void copyWithout(String name) throws IOException {
        Map<String, byte[]> entries = entries();
        entries.remove(name);
        write(entries);
    }

    private Map<String, byte[]> entries() throws IOException {
        Map<String, byte[]> entries = new HashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().<ZipEntry>map(one -> one).toList()) {
                entries.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return entries;
    }

    private void write(Map<String, byte[]> entries) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            SummedZip zip = new SummedZip(out);
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.entry(entry.getKey(), to -> to.write(entry.getValue()));
            }
            zip.finish();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
