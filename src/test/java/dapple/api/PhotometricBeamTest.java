package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.source.Beam;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** Photometric files as beams of a scene. The file is invented, and typed from memory of the structure of LM-63. */
class PhotometricBeamTest {
    private static final String ROUND =
            "nobody's lamp\nTILT=NONE\n1 100 1 3 1 1 2 0 0 0\n1 1 10\n0 45 90\n0\n200 50 0\n";

    @Test
    void isRelativeToTheIntensityAlongTheAim() {
        assertThat(read(ROUND).towards(Math.cos(Math.toRadians(45)))).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void isRefusedWithTheLineOfTheFile() {
        assertThatThrownBy(() -> read(ROUND.replace("50 0", "-50 0")))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        refused -> assertThat(refused.problem().detail()).startsWith("Line 7: "));
    }

    @Test
    void isRefusedWhereItsLightIsNotRound() {
        String halves = ROUND.replace("3 1 1 2", "3 2 1 2").replace("\n0\n200 50 0", "\n0 180\n200 50 0\n200 90 0");
        assertThatThrownBy(() -> read(halves))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        refused -> assertThat(refused.problem().detail()).startsWith("Beams are round here"));
    }

    private static Beam read(String file) {
        return BeamReader.read(Part.whole(new JsonMapper().valueToTree(Map.of("ies", file))));
    }
}
