package dapple.api;

import dapple.api.Answer.OnGrid;
import dapple.light.field.Scene;
import java.io.IOException;
import java.time.Duration;

/** How far all places of scene A are off, against the same computed as closely as the engine can. */
public final class RealError {
    private static final double FINEST = 1e-6;

    private RealError() {}

    /** Root of the mean square of the differences, divided by the mean. */
    public static double ofSceneA() throws IOException {
        Asked asked = SceneDocuments.read("a");
        Scene same = asked.scene();
        Scene finest = new Scene(FINEST, same.lamps(), same.filters(), same.solids());
        Asked fine = new Asked(finest, asked.receivers(), asked.grid(), asked.zones(), asked.uncertainty());
        Engine engine = new Engine(Duration.ofMinutes(10));
        try {
            return compared(values(engine, asked), values(engine, fine));
        } finally {
            engine.close();
        }
    }

    private static Answer.Amounts values(Engine engine, Asked asked) {
        return engine.run(run -> LightField.of(asked, run))
                .grid()
                .map(OnGrid::values)
                .orElseThrow()
                .get(0);
    }

    /** Places inside solids have no value. */
    private static double compared(Answer.Amounts rough, Answer.Amounts fine) {
        double squares = 0;
        double sum = 0;
        int count = 0;
        for (int index = 0; index < fine.count(); index++) {
            if (!Double.isNaN(fine.at(index))) {
                double off = rough.at(index) - fine.at(index);
                squares += off * off;
                sum += fine.at(index);
                count++;
            }
        }
        return Math.sqrt(squares / count) / (sum / count);
    }
}
