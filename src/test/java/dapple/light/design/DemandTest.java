package dapple.light.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand from the definition: no published numbers, the loss is our own. */
class DemandTest {
    private static final Receiver SOMEWHERE = new Receiver(new Vec(0, 0, 0), new Facing.Maximum());

    private static Demand band(double low, double high) {
        return Demand.basking("basking", Quantity.UV_INDEX, SOMEWHERE, new Band(low, high));
    }

    /** Between 1 and 4 the middle is 2; half way to an edge by factors √2 from it. */
    @ParameterizedTest
    @CsvSource({"2, 0", "2.8, 0", "1.42, 0", "4, 1", "1, 1", "3.363586, 0.25", "5, 1", "0.5, 1"})
    void losesNothingInTheMiddleOfABandAndOneAtItsEdge(double amount, double loss) {
        assertThat(band(1, 4).loss(amount)).isCloseTo(loss, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0", "1.5, 0.25", "2, 1", "3, 1"})
    void losesNothingUpToHalfALimit(double amount, double loss) {
        assertThat(Demand.shade("shade", Quantity.UV_INDEX, SOMEWHERE, 2).loss(amount))
                .isCloseTo(loss, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "1, 1", "4, 1", "0.5, 2", "6, 1.5"})
    void saysByWhatFactorItIsMissed(double amount, double factor) {
        assertThat(band(1, 4).missingFactor(amount)).isCloseTo(factor, within(1e-12));
    }

    @Test
    void isMetAtTheEdgeOfABand() {
        assertThat(band(1, 4).isMetBy(4)).isTrue();
    }

    @Test
    void isNotMetAtACeiling() {
        Demand ceiling = Demand.ceiling("ceiling", Quantity.UV_INDEX, List.of(SOMEWHERE), 4);
        assertThat(ceiling.isMetBy(4)).isFalse();
        assertThat(ceiling.isMetBy(3.999)).isTrue();
    }

    @Test
    void asksNothingOfAnOpenBand() {
        Demand open = Demand.basking("open", Quantity.UV_INDEX, SOMEWHERE, Band.OPEN);
        assertThat(open.isMetBy(0)).isTrue();
        assertThat(open.loss(1000)).isZero();
    }

    @Test
    void isNotMetByWhatIsNotANumber() {
        assertThat(band(1, 4).isMetBy(Double.NaN)).isFalse();
    }

    @Test
    void refusesAReceiverThatFacesALampStillToBeChosen() {
        Receiver towards = new Receiver(new Vec(0, 0, 0), new Facing.TowardsLamp("lamp"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Demand.basking("basking", Quantity.UV_INDEX, towards, new Band(1, 2)));
    }

    /** Even steps; one step of two; all in one; a rise by half the fall and back. */
    @ParameterizedTest
    @CsvSource({"4, 3, 2, 0", "4, 4, 2, 1", "4, 3.5, 2, 0.5", "4, 5, 2, 2", "2, 2, 2, 1000000", "1, 2, 3, 1000000"})
    void measuresHowUnevenAFallIs(double first, double second, double third, double unevenness) {
        assertThat(Way.unevenness(new double[] {first, second, third}, 0, 3)).isCloseTo(unevenness, within(1e-12));
    }
}
