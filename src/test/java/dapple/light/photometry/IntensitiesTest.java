package dapple.light.photometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IntensitiesTest {
    private static final double ROUNDING = 1e-9;

    private Intensities fourQuarters;

    @BeforeEach
    void readTheFile() throws IOException {
        fourQuarters = Lm63Test.read(Lm63Test.resource("four-quarters.ies")).intensities();
    }

    /** A uniform sphere has 4π I: the definition of the candela. */
    @Test
    void ofASphereAreFourPiLumens() {
        assertThat(all(0, 90, 180).lumens()).isCloseTo(4 * Math.PI, within(ROUNDING));
        assertThat(all(0, 90, 180).lumensDown()).isCloseTo(2 * Math.PI, within(ROUNDING));
    }

    @Test
    void upwardAloneGiveNoBeam() {
        assertThat(all(90, 180).beam()).isEmpty();
        assertThat(all(90, 180).lumens()).isCloseTo(2 * Math.PI, within(ROUNDING));
    }

    private static Intensities all(double... thetas) {
        double[][] candela = {new double[thetas.length]};
        Arrays.fill(candela[0], 1);
        return new Intensities(thetas, new double[] {0}, candela);
    }

    /** One φ stands for all. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 33, 90, 181, 270.5, -20})
    void ofOnePlaneAreTheSameAllRound(double phi) {
        Intensities round = new Intensities(new double[] {0, 90}, new double[] {0}, new double[][] {{10, 0}});
        assertThat(round.candela(45, phi)).isCloseTo(5, within(ROUNDING));
        assertThat(round.unevenness()).isZero();
    }

    /** φ, 180° − φ, 180° + φ and 360° − φ are one. */
    @ParameterizedTest
    @CsvSource({"10, 170", "10, 190", "10, 350", "60, 120", "60, -60", "90, 270", "0, 180", "37.5, 397.5"})
    void ofFourQuartersAreFoldedBack(double phi, double same) {
        assertThat(fourQuarters.candela(40, same)).isCloseTo(fourQuarters.candela(40, phi), within(ROUNDING));
    }

    /** At an entry: 2 · 500/(2π) · cos 60° · (1 + ½ sin² 60° · cos 2φ), the formula that the file was typed by. */
    @ParameterizedTest
    @CsvSource({"0, 109.419", "45, 79.577", "90, 49.736"})
    void atTheAnglesOfTheTableAreItsEntries(double phi, double candela) {
        assertThat(fourQuarters.candela(60, phi)).isCloseTo(candela, within(0.002));
    }

    @Test
    void betweenAnglesAreStraight() {
        double middle = (fourQuarters.candela(60, 15) + fourQuarters.candela(60, 30)) / 2;
        assertThat(fourQuarters.candela(60, 22.5)).isCloseTo(middle, within(ROUNDING));
    }

    /** The same light by a plain sum over small cells. */
    @Test
    void addUpAsASumOverCells() {
        double sum = 0;
        double step = Math.toRadians(0.5);
        for (double theta = 0.25; theta < 180; theta += 0.5) {
            for (double phi = 0.25; phi < 360; phi += 0.5) {
                sum += fourQuarters.candela(theta, phi) * Math.sin(Math.toRadians(theta)) * step * step;
            }
        }
        assertThat(fourQuarters.lumens()).isCloseTo(sum, withPercentage(0.01));
    }

    /** The mean of cos 2φ is 0, so that the beam is the cosine alone; the file differs from it by ½ sin² θ cos θ, 0.19 at most. */
    @Test
    void asABeamAreTheMeanAroundTheAim() {
        assertThat(fourQuarters.beam().orElseThrow().towards(Math.cos(Math.toRadians(60))))
                .isCloseTo(0.5, within(1e-4));
        assertThat(fourQuarters.unevenness()).isCloseTo(0.192, within(0.001));
    }

    @Test
    void ofTwoHalvesAndOfAWholeTurnAreFolded() {
        double[][] halves = {{4, 1}, {4, 2}, {4, 3}};
        Intensities two = new Intensities(new double[] {0, 90}, new double[] {0, 90, 180}, halves);
        assertThat(two.candela(90, 225)).isCloseTo(two.candela(90, 135), within(ROUNDING));
        double[][] turn = {{4, 1}, {4, 3}, {4, 1}};
        Intensities whole = new Intensities(new double[] {0, 90}, new double[] {0, 180, 360}, turn);
        assertThat(whole.candela(90, -90)).isCloseTo(2, within(ROUNDING));
    }

    @Test
    void beyondTheLastAngleAreNothing() {
        assertThat(fourQuarters.candela(90.1, 0)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"NaN, 0", "-1, 0", "181, 0", "10, NaN", "10, Infinity"})
    void areNotAskedInNoDirection(double theta, double phi) {
        assertThatThrownBy(() -> fourQuarters.candela(theta, phi)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, Double.POSITIVE_INFINITY})
    void areNotNegativeOrInfinite(double candela) {
        double[][] table = {{candela, 0}};
        assertThatThrownBy(() -> new Intensities(new double[] {0, 90}, new double[] {0}, table))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
