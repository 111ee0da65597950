package dapple.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where a Java 25 is: as JAVA_HOME_25 says, or where Debian and others put it. */
public final class Java25 {
    private static final Path INSTALLED = Path.of("/usr/lib/jvm");
    private static final String RELEASE = "JAVA_VERSION=\"25";

    private Java25() {}

    static boolean isInstalled() {
        return home().isPresent();
    }

    public static Path java() {
        return home().orElseThrow().resolve("bin/java");
    }

    private static Optional<Path> home() {
        return Stream.concat(Stream.ofNullable(System.getenv("JAVA_HOME_25")).map(Path::of), installed().stream())
                .filter(Java25::isJava25)
                .findFirst();
    }

    private static List<Path> installed() {
        if (!Files.isDirectory(INSTALLED)) {
            return List.of();
        }
        try (Stream<Path> homes = Files.list(INSTALLED)) {
            return homes.sorted().toList();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    /** Every Java names its version in a file of its home. */
    private static boolean isJava25(Path home) {
        Path release = home.resolve("release");
        try {
            return Files.isExecutable(home.resolve("bin/java"))
                    && Files.isReadable(release)
                    && Files.readString(release).contains(RELEASE);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
