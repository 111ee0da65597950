package dapple.site;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepeatsAskedTest {
    @ParameterizedTest
    @CsvSource({
        "NOWHERE, BASKING, UV_INDEX, false",
        "BASKING, BASKING, UV_INDEX, true",
        "BASKING, BASKING, ILLUMINANCE, true",
        "BASKING, SHADE, UV_INDEX, false",
        "EVERYWHERE, SHADE, UV_INDEX, true",
        "EVERYWHERE, BASKING, SURFACE_TEMPERATURE, false",
        "EVERYWHERE, BASKING, AIR_TEMPERATURE, false"
    })
    void asksWhereTheSiteSaysAndNeverOfTemperatures(
            RepeatsAsked asked, PointRole role, Quantity quantity, boolean repeats) {
        assertThat(asked.at(role, quantity)).isEqualTo(repeats);
    }
}
