package dapple.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A backup in its folder. It got its name only after all its sums had been compared.
 *
 * @param manifest what it says of itself; empty if it cannot be read any more
 */
record BackupFile(LocalDate day, long bytes, Optional<Manifest> manifest) {
    private static final Pattern NAME = Pattern.compile("dapple-(\\d{4}-\\d\\d-\\d\\d)\\.zip");

    static String name(LocalDate day) {
        return "dapple-" + day + ".zip";
    }

    /** The day in a name; empty for a file that is no backup. */
    static Optional<LocalDate> dayOf(Path file) {
        Matcher name = NAME.matcher(file.getFileName().toString());
        try {
            return name.matches() ? Optional.of(LocalDate.parse(name.group(1))) : Optional.empty();
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    static BackupFile read(Path file, LocalDate day) throws IOException {
        return new BackupFile(day, Files.size(file), manifest(file));
    }

    private static Optional<Manifest> manifest(Path file) throws IOException {
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            return Optional.of(archive.manifest());
        } catch (ArchiveRefusedException broken) {
            return Optional.empty();
        }
    }
}
