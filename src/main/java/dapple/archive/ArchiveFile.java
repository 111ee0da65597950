package dapple.archive;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * An archive that is read. Its entries are asked for by the names that its manifest gives; none is ever written to a place
 * that the file names.
 */
final class ArchiveFile implements AutoCloseable {
    /** More than any manifest, photo or part of a certificate. */
    private static final int MOST_BYTES = 128 << 20;

    private final ZipFile zip;
    private final Manifest manifest;

    private ArchiveFile(ZipFile zip, Manifest manifest) {
        this.zip = zip;
        this.manifest = manifest;
    }

    /**
     * Opens an archive without checking its sums.
     *
     * @throws ArchiveRefusedException if it is none, or its end is missing
     */
    static ArchiveFile open(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new ArchiveRefusedException(ArchiveFault.NO_FILE, file.toString());
        }
        ZipFile zip = zip(file);
        try {
            return new ArchiveFile(zip, manifest(zip));
        } catch (IOException | RuntimeException notOurs) {
            zip.close();
            throw notOurs;
        }
    }

    private static ZipFile zip(Path file) throws IOException {
        try {
            return new ZipFile(file.toFile(), StandardCharsets.UTF_8);
        } catch (ZipException broken) {
            throw new ArchiveRefusedException(ArchiveFault.CUT, broken);
        }
    }

    private static Manifest manifest(ZipFile zip) throws IOException {
        Manifest manifest = Optional.ofNullable(zip.getEntry(Manifest.ENTRY))
                .flatMap(entry -> Manifest.of(bytes(zip, entry)))
                .filter(found -> found.program().equals(Manifest.PROGRAM))
                .orElseThrow(() -> new ArchiveRefusedException(ArchiveFault.STRANGE, "no manifest of the program"));
        if (manifest.format() > Manifest.FORMAT) {
            throw new ArchiveRefusedException(ArchiveFault.NEWER, "format " + manifest.format());
        }
        return manifest;
    }

    Manifest manifest() {
        return manifest;
    }

    /**
     * Reads everything once and compares it with the sums, and the names with the manifest.
     *
     * @throws ArchiveRefusedException if anything is changed, missing or too much
     */
    void check() throws IOException {
        Set<String> names = new HashSet<>();
        for (ZipEntry entry : entries()) {
            if (!names.add(entry.getName())) {
                throw altered(entry.getName() + " is there twice");
            }
        }
        Set<String> expected = new HashSet<>(manifest.sha256().keySet());
        expected.addAll(List.of(Manifest.ENTRY, Archives.SUMS));
        if (!names.equals(expected)) {
            throw altered("other entries than the manifest names");
        }
        for (Map.Entry<String, String> named : manifest.sha256().entrySet()) {
            check(named.getKey(), named.getValue());
        }
    }

    private List<ZipEntry> entries() {
        return zip.stream().<ZipEntry>map(entry -> entry).toList();
    }

    private void check(String name, String sum) throws IOException {
        MessageDigest digest = Sha256.begun();
        try (InputStream content = new DigestInputStream(content(name), digest)) {
            content.transferTo(OutputStream.nullOutputStream());
        } catch (ZipException | EOFException broken) {
            throw new ArchiveRefusedException(ArchiveFault.ALTERED, broken);
        }
        if (!Sha256.text(digest).equals(sum)) {
            throw altered(name);
        }
    }

    /** What an entry holds. */
    InputStream content(String name) throws IOException {
        if (!manifest.sha256().containsKey(name)) {
            throw altered(name + " is not in the manifest");
        }
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw altered(name + " is missing");
        }
        return zip.getInputStream(entry);
    }

    /** The whole of a small entry, such as a photo. */
    byte[] bytes(String name) throws IOException {
        try (InputStream content = content(name)) {
            return most(content);
        }
    }

    private static byte[] bytes(ZipFile zip, ZipEntry entry) {
        try (InputStream content = zip.getInputStream(entry)) {
            return most(content);
        } catch (IOException cause) {
            throw new ArchiveRefusedException(ArchiveFault.ALTERED, cause);
        }
    }

    private static byte[] most(InputStream content) throws IOException {
        byte[] bytes = content.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw altered("an entry is larger than any that is written");
        }
        return bytes;
    }

    private static ArchiveRefusedException altered(String what) {
        return new ArchiveRefusedException(ArchiveFault.ALTERED, what);
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
