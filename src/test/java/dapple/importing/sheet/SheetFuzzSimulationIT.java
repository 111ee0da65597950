package dapple.importing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is sent, it is read or refused with a reason: never anything else, never slowly, never in much memory. */
class SheetFuzzSimulationIT {
    private static final int INPUTS = 100_000;
    private static final int INPUTS_IN_ARCHIVES = 2_000;

    /** Of 40 bytes each: 100 MB. */
    private static final long ROWS = 2_500_000;

    /** A tenth of what is read. */
    private static final long MOST_HELD_BYTES = 10_000_000;

    /** For one small input; a hundred times what the slowest needed, so that a busy machine does not fail it. */
    private static final Duration LONGEST = Duration.ofSeconds(5);

    private static final List<String> PIECES = List.of(
            "Enclosure",
            "Basking UVI",
            "Datum",
            "E01",
            "3,4",
            "1.234,5",
            "1e400",
            "NaN",
            "13/11/2025",
            "31.02.2025",
            "\"",
            "\"\"",
            ",",
            ";",
            "\t",
            "\n",
            "\r\n",
            "\r",
            "ä",
            "€",
            "\ufeff",
            "\u0000",
            "\u202e",
            "=1+1",
            "'",
            " ",
            "60 cm",
            "-",
            "99999999999999999999",
            "0x1F",
            "2:30 pm",
            "Pogona vitticeps",
            "../../x",
            "\ud83e\udd8e");
    private static final List<Charset> CHARSETS = List.of(
            StandardCharsets.UTF_8,
            StandardCharsets.UTF_16,
            StandardCharsets.UTF_16LE,
            StandardCharsets.ISO_8859_1,
            Charset.forName("windows-1252"));

    @TempDir
    private Path folder;

    @Test
    void anythingIsReadOrRefused() {
        for (int seed = 0; seed < INPUTS; seed++) {
            byte[] bytes = bytes(new Random(seed));
            long begun = System.nanoTime();
            readOrRefuse(bytes, seed);
            assertThat(Duration.ofNanos(System.nanoTime() - begun))
                    .as("seed %d", seed)
                    .isLessThan(LONGEST);
        }
    }

    /** Pieces of sheets, cut anywhere, with some bytes changed; or bytes alone. */
    private static byte[] bytes(Random random) {
        if (random.nextInt(8) == 0) {
            byte[] any = new byte[random.nextInt(400)];
            random.nextBytes(any);
            return any;
        }
        StringBuilder text = new StringBuilder();
        int pieces = random.nextInt(60);
        for (int piece = 0; piece < pieces; piece++) {
            text.append(PIECES.get(random.nextInt(PIECES.size()))).append(random.nextInt(3) == 0 ? "," : "");
        }
        byte[] whole = text.toString().getBytes(CHARSETS.get(random.nextInt(CHARSETS.size())));
        byte[] cut = Arrays.copyOf(whole, whole.length - random.nextInt(1 + whole.length / 3));
        for (int slip = random.nextInt(3); slip > 0 && cut.length > 0; slip--) {
            cut[random.nextInt(cut.length)] = (byte) random.nextInt(256);
        }
        return cut;
    }

    private static void readOrRefuse(byte[] bytes, int seed) {
        try {
            Survey survey =
                    Survey.of(Sheet.of("sheet", new ByteArrayInputStream(bytes)), Columns.OF_NOBODY, rows -> {});
            SheetTable table = new SheetTable(survey, mapping(survey, new Random(seed)));
            table.each(Sheet.of("sheet", new ByteArrayInputStream(bytes)), SheetFuzzSimulationIT::readOrRefuse);
        } catch (UnreadableException refused) {
            assertThat(refused.fault()).isNotNull();
        }
    }

    /** Every field comes to be read from whatever columns there are. */
    private static Mapping mapping(Survey survey, Random random) {
        Field[] fields = Field.values();
        List<String> meanings = survey.columns().stream()
                .map(column ->
                        random.nextInt(4) == 0 ? "UV_INDEX|BASKING||" : fields[random.nextInt(fields.length)].name())
                .toList();
        DayOrder[] orders = DayOrder.values();
        return new Mapping(meanings, orders[random.nextInt(orders.length)], survey.numbers());
    }

    private static void readOrRefuse(RowText row) {
        for (Field field : Field.values()) {
            try {
                row.checkWidth();
                switch (field.kind()) {
                    case TEXT -> row.text(field);
                    case NUMBER -> row.number(field, -1000, 1000);
                    case DAY -> row.day(field);
                    case TIME -> row.time(field);
                    case WORD -> row.word(field, "role", DayOrder.class);
                }
                row.amounts();
            } catch (BadCellException bad) {
                assertThat(bad.reason()).isNotNull();
            }
        }
    }

    @Test
    void anyArchiveIsReadOrRefused() throws IOException {
        byte[] archive = zip("one.csv", "Enclosure,By\nE1,Jo\n".getBytes(StandardCharsets.UTF_8));
        for (int seed = 0; seed < INPUTS_IN_ARCHIVES; seed++) {
            Random random = new Random(seed);
            byte[] broken = Arrays.copyOf(archive, archive.length - random.nextInt(archive.length / 2));
            for (int slip = 1 + random.nextInt(4); slip > 0; slip--) {
                broken[4 + random.nextInt(broken.length - 4)] = (byte) random.nextInt(256);
            }
            Path path = Files.write(folder.resolve("archive"), broken);
            try (SheetFile file = SheetFile.open(path, "archive.zip")) {
                file.sheets().forEach(sheet -> Survey.of(sheet, Columns.OF_NOBODY, rows -> {}));
            } catch (UnreadableException refused) {
                assertThat(refused.fault()).isNotNull();
            }
        }
    }

    @Test
    void whatUnpacksToFarTooMuchIsRefused() throws IOException {
        byte[] line = "a,a,a,a,a,a,a,a,a,a,a,a,a,a,a,a,a,a,a,a\n".getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        for (int at = 0; at < 400_000; at++) {
            content.write(line);
        }
        Path path = Files.write(folder.resolve("bomb"), zip("bomb.csv", content.toByteArray()));
        try (SheetFile file = SheetFile.open(path, "bomb.zip")) {
            Sheet sheet = file.sheets().get(0);
            assertThatThrownBy(() -> Survey.of(sheet, Columns.OF_NOBODY, rows -> {}))
                    .isInstanceOfSatisfying(
                            UnreadableException.class,
                            refused -> assertThat(refused.fault()).isEqualTo(Fault.TOO_DENSE));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/x.csv", "/x.csv", "a\\b\\x.csv", "C:\\x.csv", "a/../x.csv"})
    void aPathInAnArchiveIsALabelAlone(String name) throws IOException {
        Path path = Files.write(folder.resolve("paths"), zip(name, "a,b\n".getBytes(StandardCharsets.UTF_8)));
        try (SheetFile file = SheetFile.open(path, "paths.zip")) {
            assertThat(file.sheets()).extracting(Sheet::label).containsExactly("x.csv");
        }
    }

    @Test
    void anArchiveInAnArchiveIsRefused() throws IOException {
        byte[] inner = zip("x.csv", "a,b\n".getBytes(StandardCharsets.UTF_8));
        Path path = Files.write(folder.resolve("nested"), zip("inner.csv", inner));
        assertThatThrownBy(() -> SheetFile.open(path, "nested.zip"))
                .isInstanceOfSatisfying(
                        UnreadableException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(Fault.NESTED));
    }

    @Test
    void tooManySheetsAreRefused() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (int at = 0; at <= SheetFile.MOST_SHEETS; at++) {
                zip.putNextEntry(new ZipEntry(at + ".csv"));
                zip.write('a');
            }
        }
        Path path = Files.write(folder.resolve("many"), bytes.toByteArray());
        assertThatThrownBy(() -> SheetFile.open(path, "many.zip"))
                .isInstanceOfSatisfying(
                        UnreadableException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(Fault.TOO_MANY_SHEETS));
    }

    /**
     * 100 MB of rows made while they are read; what is held meanwhile is looked at ten times. Other tests leave things
     * behind that go at a time of their own: the middle one counts, and rows that were kept would be in most of them.
     */
    @Test
    void aLongSheetIsReadInLittleMemory() {
        List<Long> held = new ArrayList<>();
        long before = used();
        Survey survey = Survey.of(Sheet.of("long", new Endless(ROWS)), Columns.OF_NOBODY, done -> {
            if (done > held.size() * ROWS / 10) {
                held.add(used() - before);
            }
        });
        assertThat(survey.rows()).isEqualTo(ROWS);
        assertThat(held).hasSizeGreaterThan(8);
        assertThat(held.stream().sorted().toList().get(held.size() / 2)).isLessThan(MOST_HELD_BYTES);
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static byte[] zip(String name, byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(content);
        }
        return bytes.toByteArray();
    }

    /** A sheet of 40 bytes a row that nobody keeps. */
    private static final class Endless extends InputStream {
        private static final byte[] HEAD = "Enclosure,Date,Basking UVI,Meter,By\n".getBytes(StandardCharsets.UTF_8);
        private static final byte[] ROW = "E000001,2025-11-13 10:30,3.41,M00001,Jo\n".getBytes(StandardCharsets.UTF_8);

        private final long rows;
        private long done = -1;
        private byte[] line = HEAD;
        private int at;

        Endless(long rows) {
            this.rows = rows;
        }

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0];
        }

        @Override
        public int read(byte[] buffer, int offset, int length) {
            int written = 0;
            while (written < length && done < rows) {
                int piece = Math.min(length - written, line.length - at);
                System.arraycopy(line, at, buffer, offset + written, piece);
                written += piece;
                at += piece;
                if (at == line.length) {
                    line = ROW;
                    at = 0;
                    done++;
                }
            }
            return written == 0 ? -1 : written;
        }
    }
}
