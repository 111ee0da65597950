package dapple.importing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as they stand in sheets; the marks of thousands and decimals of languages as CLDR lists them (from memory). */
class NumberTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.7|UNDECIDED|1.7",
                "1,7|UNDECIDED|1.7",
                "0,125|UNDECIDED|0.125",
                "1.234,5|UNDECIDED|1234.5",
                "1,234.5|UNDECIDED|1234.5",
                "1.234|COMMA|1234",
                "1.234|POINT|1.234",
                "1,234|COMMA|1.234",
                "1,234|POINT|1234",
                "1.234.567|UNDECIDED|1234567",
                "1 200|UNDECIDED|1200",
                "12’500|UNDECIDED|12500",
                "-3|UNDECIDED|-3",
                "−3,5|UNDECIDED|-3.5"
            })
    void readsWhatIsWritten(String cell, NumberStyle style, double expected) {
        assertThat(Dimension.NUMBER.read(cell, style, Optional.empty())).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"NaN", "inf", "1e400", "1e5", "0x1F", "abc", "1.2.3", "1,23,4", "12 34", "1.", ".5", "--1", "1;2"
            })
    void refusesWhatIsNoNumber(String cell) {
        assertThatThrownBy(() -> Dimension.NUMBER.read(cell, NumberStyle.POINT, Optional.empty()))
                .isInstanceOf(BadCellException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.234", "1,234", "12,500"})
    void asksWhatMayBeThousandsOrDecimals(String cell) {
        assertThatThrownBy(() -> Dimension.NUMBER.read(cell, NumberStyle.UNDECIDED, Optional.empty()))
                .isInstanceOfSatisfying(
                        BadCellException.class, bad -> assertThat(bad.reason()).isEqualTo(Reason.NUMBER_AMBIGUOUS));
    }

    /** Units: the inch is 0.0254 m exactly, °F = °C · 9/5 + 32, 1 mW/cm² = 10 W/m² (SI brochure and its table of factors). */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 60 cm, 0.6",
        "LENGTH, 600mm, 0.6",
        "LENGTH, 1.2 m, 1.2",
        "LENGTH, 24 in, 0.6096",
        "ILLUMINANCE, 1200 lx, 1200",
        "ILLUMINANCE, 12 klx, 12000",
        "IRRADIANCE, 3 mW/cm², 30",
        "UVB, 250 µW/cm², 250",
        "TEMPERATURE, 95 °F, 35",
        "TEMPERATURE, 35 °C, 35",
        "UV_INDEX, 3.2, 3.2"
    })
    void takesTheUnitBehindANumber(Dimension dimension, String cell, double expected) {
        assertThat(dimension.read(cell, NumberStyle.POINT, Optional.empty())).isEqualTo(expected);
    }

    @Test
    void takesTheUnitOfTheColumnWhereTheCellHasNone() {
        assertThat(Dimension.LENGTH.read("60", NumberStyle.POINT, Columns.unit("Width (cm)", Dimension.LENGTH)))
                .isEqualTo(0.6);
    }

    @Test
    void refusesAUnitOfAnotherKind() {
        assertThatThrownBy(() -> Dimension.LENGTH.read("60 lx", NumberStyle.POINT, Optional.empty()))
                .isInstanceOfSatisfying(
                        BadCellException.class, bad -> assertThat(bad.reason()).isEqualTo(Reason.UNIT_UNKNOWN));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,7|COMMA",
                "1.7|POINT",
                "1.234,5|COMMA",
                "1,234.5|POINT",
                "1.234|UNDECIDED",
                "1,234|UNDECIDED",
                "0,125|COMMA",
                "1.234.567|COMMA",
                "1200|UNDECIDED",
                "basking|UNDECIDED"
            })
    void seesHowASheetWritesNumbers(String cell, NumberStyle expected) {
        assertThat(NumberText.evidence(cell)).isEqualTo(expected);
    }
}
