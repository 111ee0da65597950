package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.api.Asked.Grid;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.io.IOException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The scenes that the speed of the field is measured with. */
class SceneDocumentsTest {
    /** What scene A asks for: 0.5 % rms of the mean. */
    private static final double ASKED = 0.005;

    private static final double FINEST = 1e-6;

    /** Of the 50,000 places of scene A every 37th: on all floors, rows and columns. */
    private static final int EVERY = 37;

    @Test
    void sceneAHasFiftyThousandReceivers() throws IOException {
        assertThat(SceneDocuments.read("a").grid().map(Grid::size)).contains(50_000);
    }

    @Test
    void sceneBHasAPlaceEveryTwoCentimetres() throws IOException {
        assertThat(SceneDocuments.read("b").grid().map(Grid::size)).contains(61 * 31 * 46);
    }

    @Test
    void theErrorOfSceneAIsBelowWhatIsAsked() throws IOException {
        Asked asked = SceneDocuments.read("a");
        double[] rough = values(asked, ASKED);
        double[] fine = values(asked, FINEST);
        double squares = IntStream.range(0, fine.length)
                .mapToDouble(index -> (rough[index] - fine[index]) * (rough[index] - fine[index]))
                .average()
                .orElseThrow();
        double mean = IntStream.range(0, fine.length)
                .mapToDouble(index -> fine[index])
                .average()
                .orElseThrow();
        assertThat(Math.sqrt(squares) / mean).isLessThan(ASKED);
    }

    private static double[] values(Asked asked, double accuracy) {
        Scene same = asked.scene();
        Scene scene = new Scene(accuracy, same.lamps(), same.filters(), same.solids());
        Field field = Field.of(scene);
        Grid grid = asked.grid().orElseThrow();
        return IntStream.range(0, grid.size())
                .filter(index -> index % EVERY == 0)
                .mapToObj(grid::place)
                .filter(place -> scene.solidAround(place) < 0)
                .mapToDouble(place -> value(field, place, grid))
                .toArray();
    }

    private static double value(Field field, Vec place, Grid grid) {
        return field.at(new Receiver(place, grid.facing())).values().getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }
}
