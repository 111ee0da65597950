package dapple.importing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the columns of a sheet are taken for at a site that has nothing yet. */
class SuggestionTest {
    private static List<String> suggested(String sheet) {
        return suggested(sheet, Columns.OF_NOBODY);
    }

    private static List<String> suggested(String sheet, Columns columns) {
        byte[] bytes = sheet.getBytes(StandardCharsets.UTF_8);
        Survey survey = Survey.of(Sheet.of("sheet", new ByteArrayInputStream(bytes)), columns, rows -> {});
        return Mapping.suggested(survey, columns).meanings();
    }

    @Test
    void aWideSheetInGermanNamesItsEnclosures() {
        assertThat(suggested("""
                        Datum;G1 Sonnenplatz UVI;G1 Schatten UVI;G2 Sonnenplatz UVI
                        13.11.2025;3,4;0,1;4,2
                        """))
                .containsExactly("READ_ON", "UV_INDEX|BASKING||G1", "UV_INDEX|SHADE||G1", "UV_INDEX|BASKING||G2");
    }

    @Test
    void aWideSheetInEnglishNamesItsEnclosures() {
        assertThat(suggested("Week,E1 basking,E1 shade\n2025-11-13,3.4,0.1\n"))
                .containsExactly("READ_ON", "UV_INDEX|BASKING||E1", "UV_INDEX|SHADE||E1");
    }

    @ParameterizedTest
    @CsvSource({
        "Basking (UVI) E-01, UV_INDEX|BASKING||E-01",
        "Viv 3 shade, UV_INDEX|SHADE||Viv 3",
        "Köcher_Sonnenplatz_lux, ILLUMINANCE|BASKING||Köcher",
        "Oberflächentemperatur G1 Sonnenplatz (°C), SURFACE_TEMPERATURE|BASKING||G1",
        "G1 P3 UVI, UV_INDEX||P3|G1"
    })
    void theEnclosureIsWrittenAsInTheName(String name, String expected) {
        assertThat(suggested("Date," + name + "\n2025-11-13,3.4\n")).containsExactly("READ_ON", expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Notes basking", "E1 basking °C", "E1 basking temp", "Mean weekly UVI", "Temperature 2"})
    void whatIsNotToldForSureIsLeftOut(String name) {
        assertThat(suggested("Date," + name + "\n2025-11-13,3.4\n")).containsExactly("READ_ON", "-");
    }

    @Test
    void wordsInAColumnAreNoReadings() {
        assertThat(suggested("Date,E1 basking\n2025-11-13,warm enough\n")).containsExactly("READ_ON", "-");
    }

    @Test
    void anEnclosureOfTheRowLeavesNoneToTheNames() {
        assertThat(suggested("Enclosure,Date,Lamp 3 basking\nE1,2025-11-13,3.4\n"))
                .containsExactly("ENCLOSURE_CODE", "READ_ON", "-");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Woche", "Wk ending", ""})
    void theOnlyDaysAreThoseOfTheReadings(String name) {
        assertThat(suggested(name + ",Enclosure,Basking UVI\n13.11.2025,E1,3.4\n20.11.2025,E1,3.3\n"))
                .startsWith("READ_ON");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Woche,Enclosure,Basking UVI\n13.11.2025,E1,3.4\nlater,E1,3.3\n",
                "Woche,Enclosure,Basking UVI,Date\n13.11.2025,E1,3.4,13.11.2025\n",
                "Woche,Enclosure,Basking UVI,Wk ending\n13.11.2025,E1,3.4,14.11.2025\n",
                "Woche,Enclosure,Species\n13.11.2025,E1,Pogona vitticeps\n",
                "Woche,Enclosure,Basking UVI\n,E1,3.4\n"
            })
    void daysOfWhichNothingIsSureAreLeftOut(String sheet) {
        assertThat(suggested(sheet)).startsWith("-");
    }

    /** German for a day, and what a lamp has. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '&',
            value = {
                "Tag;Lamp model;Burn hours & L01;UV tube;120 & LAMP_TAG,MODEL_NAME,BURN_HOURS",
                "Tag;Gehege;UVI & 13.11.2025;G1;3,4 & READ_ON,ENCLOSURE_CODE,UV_INDEX|||",
                "Tag;Gehege;UVI & 3/4/2025;G1;3.4 & READ_ON,ENCLOSURE_CODE,UV_INDEX|||"
            })
    void aTagIsADayWhereItHasDays(String names, String row, String expected) {
        assertThat(suggested(names + "\n" + row + "\n")).containsExactly(expected.split(","));
    }

    @Test
    void whatTheSiteHasSaidOfATagStays() {
        Meaning lamp = new Meaning.Of(Field.LAMP_TAG);
        Columns said = new Columns(Map.of("tag", lamp), Set.of(), Set.of());
        assertThat(suggested("Tag;UVI\n13.11.2025;3,4\n", said)).startsWith("LAMP_TAG");
    }

    @Test
    void daysByTheirCellsAreAskedForTheirOrder() {
        byte[] bytes = "Woche,Enclosure,Basking UVI\n3/4/2025,E1,3.4\n".getBytes(StandardCharsets.UTF_8);
        Survey survey = Survey.of(Sheet.of("sheet", new ByteArrayInputStream(bytes)), Columns.OF_NOBODY, rows -> {});
        assertThat(Mapping.suggested(survey, Columns.OF_NOBODY).days()).isEqualTo(DayOrder.UNDECIDED);
    }

    @Test
    void theOnlyColumnOfDaysMayHaveTheMonthFirst() {
        assertThat(suggested("Wk ending,E1 basking\n11/20/2025,3.4\n12/04/2025,3.3\n"))
                .containsExactly("READ_ON", "UV_INDEX|BASKING||E1");
    }

    @ParameterizedTest
    @CsvSource({
        "Name;Art;Gehege, ANIMAL_NAME|SPECIES_NAME|ENCLOSURE_CODE",
        "Name;Common name;Sex, ANIMAL_NAME|SPECIES_COMMON|ANIMAL_SEX",
        "Name;Sign-in name, PERSON_NAME|SIGN_IN_NAME",
        "Name;Animal;Species, -|ANIMAL_NAME|SPECIES_NAME",
        "Name;Room;Enclosure, -|ROOM_NAME|ENCLOSURE_CODE"
    })
    void aNameIsThatOfWhatTheSheetIsAbout(String names, String expected) {
        assertThat(suggested(names + "\na;b;c\n")).containsExactly(expected.split("\\|", -1));
    }
}
