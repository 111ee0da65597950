package dapple.importing;

import dapple.importing.sheet.Fault;
import dapple.importing.sheet.UnreadableException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** The files that were sent, in a folder of their own, under the numbers of their imports. */
@Component
class Sent {
    private final Path folder;

    Sent(@Value("${dapple.data}/imports") Path folder) {
        this.folder = folder;
    }

    /** A file that has no number yet. */
    record Fresh(Path path, String sha256, long bytes) {}

    Fresh keep(InputStream content) {
        try {
            Files.createDirectories(folder);
            Path path = Files.createTempFile(folder, "sent", ".part");
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            try (DigestOutputStream out = new DigestOutputStream(Files.newOutputStream(path), digest)) {
                content.transferTo(out);
            }
            return new Fresh(path, HexFormat.of().formatHex(digest.digest()), Files.size(path));
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot keep a file that was sent", cause);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("SHA-256 is missing", impossible);
        }
    }

    void number(Fresh fresh, long runId) {
        try {
            Files.move(fresh.path(), at(runId), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot keep a file that was sent", cause);
        }
    }

    /** @throws UnreadableException if it is there no longer */
    Path of(long runId) {
        Path path = at(runId);
        if (!Files.isRegularFile(path)) {
            throw new UnreadableException(Fault.GONE);
        }
        return path;
    }

    void delete(long runId) {
        delete(at(runId));
    }

    void delete(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot delete a file that was sent", cause);
        }
    }

    void deleteOlderThan(Instant oldest) {
        for (Path path : all()) {
            try {
                if (Files.getLastModifiedTime(path).toInstant().isBefore(oldest)) {
                    Files.deleteIfExists(path);
                }
            } catch (IOException cause) {
                throw new UncheckedIOException("cannot look at a file that was sent", cause);
            }
        }
    }

    private List<Path> all() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).toList();
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot list the files that were sent", cause);
        }
    }

    private Path at(long runId) {
        return folder.resolve(Long.toString(runId));
    }
}
