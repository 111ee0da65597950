package dapple.importing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnsTest {
    private static final Columns SITE = new Columns(Map.of(), Set.of("e01"), Set.of("p7"));

    @ParameterizedTest
    @CsvSource({
        "Enclosure, ENCLOSURE_CODE",
        "ENCLOSURE No., ENCLOSURE_CODE",
        "Gehege, ENCLOSURE_CODE",
        "Espèce, SPECIES_NAME",
        "Width (cm), ENCLOSURE_WIDTH",
        "Breite in cm, ENCLOSURE_WIDTH",
        "Messgerät, METER_CODE",
        "By, READ_BY",
        "Datum, READ_ON"
    })
    void knowsColumnsByTheirNames(String name, Field expected) {
        assertThat(SITE.find(name)).contains(new Meaning.Of(expected));
    }

    @ParameterizedTest
    @CsvSource({
        "Basking UVI, UV_INDEX, BASKING",
        "Shade UVI, UV_INDEX, SHADE",
        "shade lux, ILLUMINANCE, SHADE",
        "Helligkeit Sonnenplatz (klx), ILLUMINANCE, BASKING",
        "UV-Index Sonnenplatz, UV_INDEX, BASKING",
        "Nearest reachable (UVI), UV_INDEX, NEAREST_REACHABLE",
        "Surface temperature basking (°C), SURFACE_TEMPERATURE, BASKING"
    })
    void knowsReadingsOfAPlaceByTheirNames(String name, Quantity quantity, PointRole role) {
        assertThat(SITE.find(name)).contains(new Meaning.Amount(quantity, Optional.of(role)));
    }

    @Test
    void knowsAColumnOfOneEnclosure() {
        assertThat(SITE.find("E01 basking"))
                .contains(new Meaning.Amount(
                        Quantity.UV_INDEX, Optional.of(PointRole.BASKING), Optional.empty(), Optional.of("E01")));
    }

    @Test
    void knowsAPointOfTheSite() {
        assertThat(SITE.find("P7 UVI"))
                .contains(new Meaning.Amount(Quantity.UV_INDEX, Optional.empty(), Optional.of("P7"), Optional.empty()));
    }

    @Test
    void offersWhatIsNearlyRight() {
        assertThat(SITE.near("Enclosrue")).containsExactly(new Meaning.Of(Field.ENCLOSURE_CODE));
    }

    @Test
    void takesNothingThatIsOnlyNearlyRight() {
        assertThat(SITE.find("Enclosrue")).isEmpty();
    }

    @Test
    void leavesWhatItDoesNotKnow() {
        assertThat(SITE.find("Favourite food")).isEmpty();
    }

    @Test
    void followsWhatTheSiteHasChosenBefore() {
        Columns chosen = new Columns(Map.of("enclosure", new Meaning.LeftOut()), Set.of(), Set.of());
        assertThat(chosen.find("Enclosure")).contains(new Meaning.LeftOut());
    }

    @Test
    void everyMeaningIsReadFromItsCode() {
        assertThat(Arrays.stream(Field.values()).map(Meaning.Of::new))
                .allSatisfy(meaning -> assertThat(Meaning.of(meaning.code())).contains(meaning));
    }

    @Test
    void everyFieldHasAName() {
        assertThat(Words.of("column").values())
                .containsAll(Arrays.stream(Field.values()).map(Field::name).toList());
    }
}
