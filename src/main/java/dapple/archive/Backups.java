package dapple.archive;

import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/** The folder of backups: one file a day, of everything. */
@Service
class Backups {
    private static final String UNFINISHED = ".part";

    private final Archives archives;
    private final Path folder;
    private final Retention retention;
    private final Clock clock;

    Backups(
            Archives archives,
            @Value("${dapple.data}") String data,
            @Value("${dapple.backup.days:14}") int days,
            @Value("${dapple.backup.months:12}") int months,
            Clock clock) {
        this.archives = archives;
        this.folder = Path.of(data, "backups").toAbsolutePath().normalize();
        this.retention = new Retention(days, months);
        this.clock = clock;
    }

    Path folder() {
        return folder;
    }

    Retention retention() {
        return retention;
    }

    /** Newest first. */
    List<BackupFile> all() throws IOException {
        Map<LocalDate, Path> files = files();
        List<BackupFile> all = new ArrayList<>();
        for (Map.Entry<LocalDate, Path> file : files.entrySet()) {
            all.add(BackupFile.read(file.getValue(), file.getKey()));
        }
        all.sort(Comparator.comparing(BackupFile::day).reversed());
        return List.copyOf(all);
    }

    Optional<BackupFile> newest() throws IOException {
        return all().stream().findFirst();
    }

    /** The file of a day, if there is one. */
    Optional<Path> file(LocalDate day) throws IOException {
        return Optional.ofNullable(files().get(day));
    }

    private Map<LocalDate, Path> files() throws IOException {
        Map<LocalDate, Path> files = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> found = Files.list(folder)) {
                found.forEach(file -> BackupFile.dayOf(file).ifPresent(day -> files.put(day, file)));
            }
        }
        return files;
    }

    /**
     * Writes a backup, checks it, and gives it the name of today; a former one of today is replaced. What retention no
     * longer keeps is deleted after that.
     */
    synchronized BackupFile make(String madeBy) throws IOException {
        Files.createDirectories(folder, forOwnerAlone("rwx------"));
        LocalDate today = LocalDate.now(clock.withZone(ZoneId.systemDefault()));
        Path file = folder.resolve(BackupFile.name(today));
        Path unfinished = folder.resolve(BackupFile.name(today) + UNFINISHED);
        Files.deleteIfExists(unfinished);
        try {
            write(Files.createFile(unfinished, forOwnerAlone("rw-------")), madeBy);
            Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(unfinished);
        }
        keepFolderOnDisk();
        deleteOld();
        return BackupFile.read(file, today);
    }

    private void write(Path to, String madeBy) throws IOException {
        try (FileOutputStream out = new FileOutputStream(to.toFile())) {
            archives.write(new ArchiveScope.Everything(), madeBy, out);
            out.getFD().sync();
        }
        try (ArchiveFile written = ArchiveFile.open(to)) {
            written.check();
        }
    }

    /** Hashes of passwords are in it. */
    private static FileAttribute<?>[] forOwnerAlone(String permissions) {
        boolean isPosix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return isPosix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    /** The new name outlasts a loss of power, where folders can be synchronised. */
    private void keepFolderOnDisk() throws IOException {
        if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    private void deleteOld() throws IOException {
        Map<LocalDate, Path> files = files();
        Set<LocalDate> kept = retention.kept(files.keySet());
        for (Map.Entry<LocalDate, Path> file : files.entrySet()) {
            if (!kept.contains(file.getKey())) {
                Files.delete(file.getValue());
            }
        }
    }
}
