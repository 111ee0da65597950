package dapple.importing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SurveyTest {
    private static final String GERMAN =
            "Messungen Reptilienhaus Süd\n\nGehege;Art;Datum;UVI Sonnenplatz;Gerät\nE1;Pogona vitticeps;13.11.2025;3,4;M1\n";

    private static Survey survey(byte[] bytes) {
        return Survey.of(Sheet.of("sheet", new ByteArrayInputStream(bytes)), Columns.OF_NOBODY, rows -> {});
    }

    private static Survey survey(String text) {
        return survey(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> names(Survey survey) {
        return survey.columns().stream().map(ColumnFound::name).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "windows-1252", "UTF-16"})
    void readsLettersByTheirEncoding(String charset) {
        assertThat(names(survey(GERMAN.getBytes(Charset.forName(charset))))).contains("Gerät");
    }

    @Test
    void readsUtf8WithAMark() {
        assertThat(names(survey("\ufeffEnclosure,Date\nE1,2025-01-01\n"))).containsExactly("Enclosure", "Date");
    }

    @Test
    void findsTheNamesBelowATitle() {
        assertThat(survey(GERMAN).headLine()).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void findsWhatSeparates(String separator) {
        String text = String.join(separator, "Enclosure", "Species", "By") + "\n"
                + String.join(separator, "E1", "\"a, b; c\"", "Jo") + "\n";
        assertThat(survey(text).separator()).isEqualTo(separator);
    }

    @Test
    void countsRowsAndNoEmptyOnes() {
        assertThat(survey("Enclosure,By\nE1,Jo\n\n,\nE2,Jo\n").rows()).isEqualTo(2);
    }

    @Test
    void seesDecimalCommas() {
        assertThat(survey(GERMAN).numbers()).isEqualTo(NumberStyle.COMMA);
    }

    @Test
    void doesNotTakeDaysForNumbers() {
        assertThat(survey("Enclosure;Date\nE1;13.11.2025\n").numbers()).isEqualTo(NumberStyle.UNDECIDED);
    }

    @Test
    void namesTheLineOfAQuoteThatIsNotClosed() {
        assertThatThrownBy(() -> survey("Enclosure,By\nE1,Jo\nE2,\"Jo\nE3,Jo\n"))
                .isInstanceOfSatisfying(
                        UnreadableException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(Fault.QUOTES));
    }

    @Test
    void refusesTooManyColumns() {
        assertThatThrownBy(() -> survey("a,".repeat(400) + "\n"))
                .isInstanceOfSatisfying(
                        UnreadableException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(Fault.TOO_MANY_COLUMNS));
    }

    @Test
    void refusesALongField() {
        assertThatThrownBy(() -> survey("Enclosure,By\nE1," + "x".repeat(SheetReader.LONGEST_FIELD + 1) + "\n"))
                .isInstanceOfSatisfying(
                        UnreadableException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(Fault.FIELD_TOO_LONG));
    }

    @Test
    void refusesBytesThatAreNoText() {
        assertThatThrownBy(() -> survey(new byte[] {1, 2, 0, 3}))
                .isInstanceOfSatisfying(
                        UnreadableException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(Fault.NOT_TEXT));
    }

    @Test
    void aRowWithTooManyCellsIsBad() {
        Survey survey = survey("Enclosure,By\nE1,Jo,extra\n");
        SheetTable table = new SheetTable(survey, Mapping.suggested(survey, Columns.OF_NOBODY));
        List<RowText> rows = new ArrayList<>();
        byte[] bytes = "Enclosure,By\nE1,Jo,extra\n".getBytes(StandardCharsets.UTF_8);
        table.each(Sheet.of("sheet", new ByteArrayInputStream(bytes)), rows::add);
        assertThatThrownBy(rows.get(0)::checkWidth)
                .isInstanceOfSatisfying(
                        BadCellException.class, bad -> assertThat(bad.reason()).isEqualTo(Reason.ROW_TOO_LONG));
    }
}
