package dapple.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A spreadsheet program of its own origin, to see how files open in one. */
public final class LibreOffice {
    private static final int MOST_SECONDS = 120;

    /** The library of the program's spreadsheet, as Linux systems lay it beside the program. */
    private static final String SPREADSHEET = "libsclo.so";

    /** Character codes of comma, semicolon and tab. */
    private static final String PARTED_AT = "44/59/9";

    /** The program's numbers for encodings. */
    private static final int UTF_8 = 76;

    private static final int WINDOWS_1252 = 1;

    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private LibreOffice() {}

    /** Whether the spreadsheet is there: systems ship the program's common part without it. */
    static boolean isInstalled() {
        return program().filter(LibreOffice::knowsSheets).isPresent();
    }

    private static boolean knowsSheets(Path program) {
        try {
            return Files.exists(program.toRealPath().resolveSibling(SPREADSHEET));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Opens a list and saves it as another kind, such as {@code fods}. A person is asked how to read the file; here the
     * proposals are taken: parted at commas, semicolons and tabs, and the encoding that the byte order mark tells.
     */
    public static Path convertCsv(Path file, String kind) throws IOException, InterruptedException {
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElseThrow();
        Process process = new ProcessBuilder(
                        program().orElseThrow().toString(),
                        "-env:UserInstallation=" + folder.resolve("office").toUri(),
                        "--headless",
                        "--infilter=CSV:" + PARTED_AT + ",34," + encoding(file) + ",1",
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

    private static int encoding(Path csv) throws IOException {
        try (InputStream from = Files.newInputStream(csv)) {
            byte[] first = from.readNBytes(BYTE_ORDER_MARK.length);
            return Arrays.equals(first, BYTE_ORDER_MARK) ? UTF_8 : WINDOWS_1252;
        }
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
