package dapple.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A spreadsheet program of its own origin, to see how files open in one. */
public final class LibreOffice {
    private static final int MOST_SECONDS = 120;

    private LibreOffice() {}

    static boolean isInstalled() {
        return program().isPresent();
    }

    /** Opens a file and saves it as another kind, such as {@code fods}. */
    public static Path convert(Path file, String kind) throws IOException, InterruptedException {
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElseThrow();
        Process process = new ProcessBuilder(
                        program().orElseThrow().toString(),
                        "-env:UserInstallation=" + folder.resolve("office").toUri(),
                        "--headless",
                        "--convert-to",
                        kind,
                        "--outdir",
                        folder.toString(),
                        file.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("office.log").toFile())
                .start();
        if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("LibreOffice did not end");
        }
        String name = file.getFileName().toString().replaceAll("\\.[^.]+$", "." + kind);
        return folder.resolve(name);
    }

    private static Optional<Path> program() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.of(path.split(":", -1))
                .filter(folder -> !folder.isEmpty())
                .flatMap(folder -> List.of("soffice", "libreoffice").stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
