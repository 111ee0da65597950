package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.Spectrum.Line;
import dapple.light.spectrum.Spectrum.Sample;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpectrumReaderTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '"',
            value = {
                "[]; ''",
                "{}; /version",
                "{'version':2,'samples':[]}; /version",
                "{'version':'1','samples':[]}; /version",
                "{'version':1}; /samples",
                "{'version':1,'samples':null}; /samples",
                "{'version':1,'samples':{}}; /samples",
                "{'version':1,'sample':[]}; /sample",
                "{'version':1,'samples':[],'unit':'W'}; /unit",
                "{'version':1,'samples':[[280,0],[281]]}; /samples/1",
                "{'version':1,'samples':[[280,0,0]]}; /samples/0",
                "{'version':1,'samples':[280]}; /samples/0",
                "{'version':1,'samples':[['280',0]]}; /samples/0/0",
                "{'version':1,'samples':[[280,null]]}; /samples/0/1",
                "{'version':1,'samples':[[280,'NaN']]}; /samples/0/1",
                "{'version':1,'samples':[[280,true]]}; /samples/0/1",
                "{'version':1,'samples':[[280,1e400]]}; /samples/0/1",
                "{'version':1,'samples':[[1e400,1]]}; /samples/0/0",
                "{'version':1,'samples':[[280,-1e400]]}; /samples/0/1",
                "{'version':1,'samples':[[280,-0.001]]}; /samples/0/1",
                "{'version':1,'samples':[[280,1e13]]}; /samples/0/1",
                "{'version':1,'samples':[[0,1]]}; /samples/0/0",
                "{'version':1,'samples':[[-280,1]]}; /samples/0/0",
                "{'version':1,'samples':[[0.28,1]]}; /samples/0/0",
                "{'version':1,'samples':[[280,0],[2e6,1]]}; /samples/1/0",
                "{'version':1,'samples':[[280,0],[282,0],[281,0]]}; /samples/2/0",
                "{'version':1,'samples':[[280,0],[280,0]]}; /samples/1/0",
                "{'version':1,'samples':[[280,0],[280.00000000000000000001,0]]}; /samples/1/0",
                "{'version':1,'lines':null}; /lines",
                "{'version':1,'lines':[[254]]}; /lines/0",
                "{'version':1,'lines':[[254,1],[365,-1]]}; /lines/1/1",
                "{'version':1,'lines':[[0.9,1]]}; /lines/0/0",
                "{'version':1,'lines':[[254,1e400]]}; /lines/0/1",
                "{'version':1,'samples':[[280,-1]],'lines':[[0,1]]}; /samples/0/1"
            })
    void namesTheMemberAtFault(String document, String pointer) {
        Problem problem = problem(document);
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.detail()).endsWith(".");
        assertThat(problem.pointer()).contains("''".equals(pointer) ? "" : pointer);
    }

    @ParameterizedTest
    @CsvSource({"samples, 100000", "lines, 10000"})
    void takesAsManyAsAreAllowedAndNoMore(String member, int most) {
        Spectrum spectrum = read(document(member, most));
        assertThat(spectrum.samples().size() + spectrum.lines().size()).isEqualTo(most);
        Problem problem = problem(document(member, most + 1));
        assertThat(problem.status()).isEqualTo(413);
        assertThat(problem.pointer()).contains("/" + member);
    }

    private static String document(String member, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(nanometres -> "[" + nanometres + ",1]")
                .collect(Collectors.joining(",", "{'version':1,'" + member + "':[", "]}"));
    }

    @Test
    void readsSamplesAndLines() {
        Spectrum spectrum = read("{'version':1.0,'lines':[[365,2],[254,1e-3]],'samples':[[280,0],[280.5,0.25]]}");
        assertThat(spectrum.samples()).containsExactly(new Sample(280, 0), new Sample(280.5, 0.25));
        assertThat(spectrum.lines()).containsExactly(new Line(365, 2), new Line(254, 0.001));
    }

    @Test
    void takesEitherAlone() {
        assertThat(read("{'version':1,'lines':[[254,1]]}").samples()).isEmpty();
        assertThat(read("{'version':1,'samples':[]}").lines()).isEmpty();
    }

    private static Problem problem(String document) {
        return catchThrowableOfType(RefusedException.class, () -> read(document))
                .problem();
    }

    private static Spectrum read(String document) {
        return SpectrumReader.read(BodyReader.parse(document.replace('\'', '"').getBytes(StandardCharsets.UTF_8)));
    }
}
