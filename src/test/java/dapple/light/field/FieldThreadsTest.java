package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.geometry.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a place gets does not depend on who asked before, or on how many threads ask: to the last bit. */
class FieldThreadsTest {
    private static final double ACCURACY = 1e-3;
    private static final int PLACES = 60;

    static Stream<SeededScene> scenes() {
        return IntStream.rangeClosed(1, 11).mapToObj(SeededScenes::shaded).map(scene -> scene.emitting(1));
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void isTheSameForEveryNumberOfThreads(SeededScene scene) throws InterruptedException {
        Light[] alone = computed(scene, 1);
        for (int threads : List.of(2, 3, 7)) {
            assertThat(computed(scene, threads)).containsExactly(alone);
        }
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void isTheSameForAFieldThatHasAnsweredNothingYet(SeededScene scene) {
        Field used = Field.of(scene.scene(ACCURACY));
        for (int index = 0; index < PLACES; index++) {
            Light light = used.at(receiver(scene, index));
            assertThat(Field.of(scene.scene(ACCURACY)).at(receiver(scene, index)))
                    .isEqualTo(light);
        }
    }

    private static Light[] computed(SeededScene scene, int threads) throws InterruptedException {
        Field field = Field.of(scene.scene(ACCURACY));
        Light[] lights = new Light[PLACES];
        List<Thread> working = new ArrayList<>();
        for (int first = 0; first < threads; first++) {
            int start = first;
            Thread thread = new Thread(() -> {
                Field own = field.another();
                for (int index = start; index < PLACES; index += threads) {
                    lights[index] = own.at(receiver(scene, index));
                }
            });
            thread.start();
            working.add(thread);
        }
        for (Thread thread : working) {
            thread.join();
        }
        return lights;
    }

    private static Receiver receiver(SeededScene scene, int index) {
        int row = index / 5 % 4;
        int floor = index / 20;
        Vec aside = new Vec(index % 5 * 0.05, row * 0.05, floor * 0.03);
        Facing facing = index % 3 == 0 ? new Facing.Maximum() : scene.receiver().facing();
        return new Receiver(scene.place().plus(aside), facing);
    }
}
