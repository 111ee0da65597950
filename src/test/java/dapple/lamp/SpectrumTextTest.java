package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.lamp.SpectrumText.Outcome;
import dapple.light.spectrum.Spectrum.Sample;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpectrumTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "300,0.5\n301,1e-3",
                "300;0,5\n301;0,001",
                "300\t0,5\r\n301\t0,001\r\n",
                "  300   0.5\n301 0.001\n\n",
                "# of a lamp\nnm,W/(m2 nm)\n300, 0.5\n# a remark\n301, 0.001",
                "wavelength\n300,5e-1\n301,0.1e-2"
            })
    void readsWhatProgramsWrite(String content) {
        assertThat(SpectrumText.read(content))
                .isInstanceOfSatisfying(
                        Outcome.Read.class,
                        read -> assertThat(read.spectrum().samples())
                                .containsExactly(new Sample(300, 0.5), new Sample(301, 0.001)));
    }

    @ParameterizedTest
    @CsvSource({
        "'300,1\n301,x', 2",
        "'300,1\n301,', 2",
        "'300,1\n301', 2",
        "'300,1\n301,1,1', 2",
        "'300,1\n301,NaN', 2",
        "'300,1\n301,Infinity', 2",
        "'300,1\n301,1e400', 2",
        "'300,1\n301,-0.1', 2",
        "'300,1\n300,1', 2",
        "'nm,amount\n\n300,1\n299,1', 4",
        "'300,1\n2e6,1', 2",
        "'0,1\n300,1', 1",
        "'300,1\n301,1\u0000', 2"
    })
    void refusesWithTheLineAtFault(String content, int line) {
        assertThat(SpectrumText.read(content))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.line()).isEqualTo(line));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "only words", "300,1"})
    void asksForTwoRows(String content) {
        assertThat(SpectrumText.read(content))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.reason()).contains("two rows or more"));
    }

    @Test
    void takesFiveThousandRowsAndNoMore() {
        assertThat(SpectrumText.read(rows(5000))).isInstanceOf(Outcome.Read.class);
        assertThat(SpectrumText.read(rows(5001)))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.line()).isEqualTo(5001));
    }

    private static String rows(int count) {
        return IntStream.range(0, count).mapToObj(row -> (300 + row) + ",1").collect(Collectors.joining("\n"));
    }
}
