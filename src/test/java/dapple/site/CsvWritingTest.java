package dapple.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.testing.CsvTable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.context.support.StaticMessageSource;

/** Against RFC 4180 and a reader of another library than the one that writes. */
class CsvWritingTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final CsvColumns<Object> ONE = CsvColumns.none().with("a", cell -> cell);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain",
                "with, comma",
                "with \"quotes\"",
                "first line\r\nsecond line",
                "first line\nsecond line",
                "Äußere Öffnung, 0,1 µm — é",
                "kanji 爬虫類",
                " spaces around ",
                "x = 1",
                "\"",
                ";"
            })
    void aTextComesBackAsItWas(String text) throws IOException {
        assertThat(readBack(ONE, text)).containsExactly(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+49 30", "-5", "@name", "\tindented", "\rreturned", "=cmd|' /C calc'!A0"})
    void whatASpreadsheetTookForAFormulaIsGuarded(String text) throws IOException {
        assertThat(readBack(ONE, text)).containsExactly("'" + text);
    }

    /** Spreadsheets part cells at semicolons and tabs too, unless these are quoted. */
    @Test
    void severalTextsAreOneCellWhereSemicolonsPartCells() throws IOException {
        assertThat(written(ONE, List.of("one", "two"))).isEqualTo("\uFEFFA\r\n\"one; two\"\r\n");
        assertThat(written(ONE, "one\ttwo")).isEqualTo("\uFEFFA\r\n\"one\ttwo\"\r\n");
    }

    @Test
    void aTextThatMayBeMissingIsGuardedToo() throws IOException {
        assertThat(readBack(ONE, Optional.of("=1+1"))).containsExactly("'=1+1");
    }

    @Test
    void soIsOneThatMayBeMissingForTwoReasons() throws IOException {
        assertThat(readBack(ONE, Optional.of(Optional.of("=1+1")))).containsExactly("'=1+1");
    }

    @Test
    void severalTextsAreGuardedByTheFirst() throws IOException {
        assertThat(readBack(ONE, List.of("=1", "2"))).containsExactly("'=1; 2");
    }

    @Test
    void aNegativeNumberStaysANumber() throws IOException {
        assertThat(readBack(ONE, -12.5)).containsExactly("-12.5");
    }

    @Test
    void numbersAreWrittenWithAPointAndWithoutPowersOrGroups() throws IOException {
        assertThat(written(ONE, 1_234_567.0, 1e-7, 3.0, 0.1, 42, 7L))
                .isEqualTo("\uFEFFA\r\n1234567\r\n0.0000001\r\n3\r\n0.1\r\n42\r\n7\r\n");
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> written(ONE, Double.NaN)).isInstanceOf(NumberFormatException.class);
    }

    @Test
    void whatIsUnknownIsEmptyAndNeverZero() throws IOException {
        CsvColumns<Object> two = ONE.with("b", cell -> "next");
        assertThat(written(two, Optional.empty())).isEqualTo("\uFEFFA,B\r\n,next\r\n");
    }

    /** ISO 8601; Berlin is two hours before UTC in summer and one in winter, as the EU's rule of summer time has it. */
    @Test
    void timesAreThoseOfTheSiteWithTheirOffset() throws IOException {
        assertThat(readBack(ONE, Instant.parse("2026-07-01T10:00:00Z"), Instant.parse("2026-12-01T10:00:00.5Z")))
                .containsExactly("2026-07-01T12:00:00+02:00", "2026-12-01T11:00:00+01:00");
    }

    @Test
    void aDayHasNoTime() throws IOException {
        assertThat(readBack(ONE, LocalDate.of(2026, 2, 28))).containsExactly("2026-02-28");
    }

    @Test
    void yesAndNoAreWords() throws IOException {
        assertThat(readBack(ONE, true, false)).containsExactly("yes", "no");
    }

    @Test
    void namesOfStatesAreTheirWords() throws IOException {
        CsvColumns<Object> word = CsvColumns.none().word("a", "word.", cell -> cell);
        assertThat(readBack(word, Kind.FIRST, List.of(Kind.FIRST, Kind.SECOND), Optional.of(Kind.SECOND)))
                .containsExactly("the first", "the first; the second", "the second");
    }

    @Test
    void whatNobodySaidHowToWriteIsRefused() {
        assertThatThrownBy(() -> written(ONE, new Object())).isInstanceOf(IllegalArgumentException.class);
    }

    /** Rows leave while later ones are still to be found: what is held back is no more than a buffer. */
    @Test
    void aHundredThousandRowsLeaveAsTheyAreFound() throws IOException {
        int rows = 100_000;
        long bufferBytes = 100_000;
        Counted to = new Counted();
        long[] mostHeldBack = {0};
        String text = "a text of thirty characters, or";
        CsvRows<Object> source = row -> IntStream.range(0, rows).forEach(at -> {
            row.accept(text);
            mostHeldBack[0] = Math.max(mostHeldBack[0], (at + 1L) * (text.length() + 4) - to.bytes);
        });

        writing().write(ONE, source, ZONE, to);

        assertThat(to.bytes).isGreaterThan(rows * 30L);
        assertThat(mostHeldBack[0]).isLessThan(bufferBytes);
    }

    private static List<String> readBack(CsvColumns<Object> columns, Object... cells) throws IOException {
        return CsvTable.of(written(columns, cells).getBytes(StandardCharsets.UTF_8))
                .column("A");
    }

    private static String written(CsvColumns<Object> columns, Object... cells) throws IOException {
        ByteArrayOutputStream to = new ByteArrayOutputStream();
        writing().write(columns, List.of(cells)::forEach, ZONE, to);
        return to.toString(StandardCharsets.UTF_8);
    }

    private static CsvWriting writing() {
        StaticMessageSource words = new StaticMessageSource();
        words.addMessage("column.a", Locale.UK, "A");
        words.addMessage("column.b", Locale.UK, "B");
        words.addMessage("csv.yes", Locale.UK, "yes");
        words.addMessage("csv.no", Locale.UK, "no");
        words.addMessage("word.FIRST", Locale.UK, "the first");
        words.addMessage("word.SECOND", Locale.UK, "the second");
        return new CsvWriting(words);
    }

    private enum Kind {
        FIRST,
        SECOND
    }

    private static final class Counted extends OutputStream {
        private long bytes;

        @Override
        public void write(int one) {
            bytes++;
        }

        @Override
        public void write(byte[] some, int from, int length) {
            bytes += length;
        }
    }
}
