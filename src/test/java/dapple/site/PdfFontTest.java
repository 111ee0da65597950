package dapple.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The standard fonts of PDF have the letters of WinAnsi (ISO 32000-1, annex D). */
class PdfFontTest {
    private final PdfFont font = PdfFont.plain();

    @Test
    void lettersOfWesternEuropeStay() {
        assertThat(font.printable("Ä ö ß é ñ µ ² – ’")).isEqualTo("Ä ö ß é ñ µ ² – ’");
    }

    @Test
    void whatTheFontHasNotIsAQuestionMark() {
        assertThat(font.printable("爬虫 x")).isEqualTo("?? x");
    }

    @Test
    void aLineBreakIsNotPrinted() {
        assertThat(font.printable("a\nb")).isEqualTo("a?b");
    }

    /** Helvetica in thousandths of its size: "one two" 3502, "three four" 4280 (metrics of the standard fonts, from memory). */
    @Test
    void linesBreakBetweenWordsAndLoseNone() {
        assertThat(font.wrap("one two three four", 10, 42)).containsExactly("one two", "three", "four");
    }

    @Test
    void aWordLongerThanALineIsCut() {
        assertThat(font.wrap("abcdefghijklmnopqrstuvwxyz", 10, 45))
                .singleElement()
                .asString()
                .endsWith("...");
    }
}
