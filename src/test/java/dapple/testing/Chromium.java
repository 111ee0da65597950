package dapple.testing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where Debian and others put Chromium and its driver. */
public final class Chromium {
    private static final List<String> BROWSERS =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");
    private static final List<String> DRIVERS = List.of("/usr/bin/chromedriver", "/usr/local/bin/chromedriver");

    private Chromium() {}

    static boolean isInstalled() {
        return first(BROWSERS).isPresent() && first(DRIVERS).isPresent();
    }

    public static Path browser() {
        return first(BROWSERS).orElseThrow();
    }

    public static Path driver() {
        return first(DRIVERS).orElseThrow();
    }

    private static Optional<Path> first(List<String> candidates) {
        return candidates.stream()
                .map(Path::of)
                .flatMap(path -> Files.isExecutable(path) ? Stream.of(path) : Stream.empty())
                .findFirst();
    }
}
