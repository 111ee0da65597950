package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NamesTest {
    /** The table of docs/scene.md. */
    @Test
    void areTheLightQuantitiesOfTheFormat() {
        assertThat(Names.all()).containsExactlyInAnyOrder("uvi", "illuminance", "uva", "irA", "irB", "irradiance");
    }

    @ParameterizedTest
    @EnumSource(
            value = Quantity.class,
            names = {"SURFACE_TEMPERATURE", "AIR_TEMPERATURE", "UVB_IRRADIANCE"})
    void haveNoPlaceForWhatNoLampEmitsInTheFormat(Quantity quantity) {
        assertThatThrownBy(() -> Names.of(quantity)).isInstanceOf(IllegalArgumentException.class);
    }
}
