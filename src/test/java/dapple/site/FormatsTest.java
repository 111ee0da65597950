package dapple.site;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormatsTest {
    private final Formats formats = new Formats();

    @ParameterizedTest
    @CsvSource({
        "UV_INDEX, 3.04, 3.0",
        "ILLUMINANCE, 12345.6, '12,346'",
        "IRRADIANCE, 350.4, 350",
        "UVA, 11.5, 12",
        "UVB_IRRADIANCE, 45.2, 45",
        "SURFACE_TEMPERATURE, 38.46, 38.5",
        "AIR_TEMPERATURE, -0.04, 0.0",
        "AIR_TEMPERATURE, -2.5, -2.5"
    })
    void writesANumberAsItsQuantityWants(Quantity quantity, double amount, String written) {
        assertThat(formats.amount(quantity, amount)).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource({
        "UV_INDEX, 2.9",
        "ILLUMINANCE, 3\u00a0lx",
        "UVB_IRRADIANCE, 3\u00a0µW/cm²",
        "AIR_TEMPERATURE, 2.9\u00a0°C"
    })
    void writesTheUnitBesideALimit(Quantity quantity, String written) {
        assertThat(formats.withUnit(quantity, 2.9)).isEqualTo(written);
    }

    /** 6.2 of 8.0 is 77.5 %, which machines hold as a little less. */
    @Test
    void aHalfPercentIsRoundedUpwards() {
        assertThat(formats.percent((14.2 - 8.0) / 8.0)).isEqualTo("78\u00a0%");
    }

    @Test
    void anAmountIsKnownAsItIsShown() {
        assertThat(formats.shown(Quantity.UV_INDEX, 14.17)).isEqualTo(14.2);
        assertThat(formats.shown(Quantity.ILLUMINANCE, 12345.6)).isEqualTo(12346);
    }

    @Test
    void writesTheUnitOfAnIntervalOnce() {
        assertThat(formats.interval(Quantity.ILLUMINANCE, new Interval(900, 1100)))
                .isEqualTo("900 to 1,100\u00a0lx");
    }
}
