package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EngineTest {
    private static final int PLACES = 500;

    private final Engine engine = new Engine(Duration.ofMinutes(1));
    private final Engine hasty = new Engine(Duration.ZERO);

    @AfterEach
    void close() {
        engine.close();
        hasty.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 7})
    void findsTheSameToTheLastBitWithAnyNumberOfThreads(int threads) throws InterruptedException {
        assertThat(computed(threads)).containsExactly(computed(1));
    }

    private static double[] computed(int threads) throws InterruptedException {
        Lamp lamp = new Lamp(
                "a",
                new Vec(0, 0, 1),
                new Vec(0, 0, -1),
                new Source.Rectangle(0.4, new Vec(1, 0, 0), 0.2),
                List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
        Field field = Field.of(new Scene(0.001, List.of(lamp), List.of(), List.of()));
        Random chance = new Random(7);
        List<Vec> places = IntStream.range(0, PLACES)
                .mapToObj(index -> new Vec(chance.nextDouble(), chance.nextDouble(), chance.nextDouble() * 0.9))
                .toList();
        double[] found = new double[PLACES];
        Chunks chunks = new Chunks(PLACES, Deadline.in(Duration.ofMinutes(1)));
        List<Thread> working = IntStream.range(0, threads)
                .mapToObj(number -> new Thread(() -> chunks.work(
                        field::another,
                        (own, index) -> found[index] = own.at(new Receiver(places.get(index), new Facing.Maximum()))
                                .values()
                                .getOrDefault(Quantity.UV_INDEX, -1.0))))
                .toList();
        working.forEach(Thread::start);
        for (Thread thread : working) {
            thread.join();
        }
        return found;
    }

    @Test
    void givesUpWhatTakesTooLong() {
        CountDownLatch never = new CountDownLatch(1);
        RefusedException refused =
                catchThrowableOfType(RefusedException.class, () -> hasty.run(run -> wait(run, never)));
        assertThat(refused.problem().status()).isEqualTo(503);
    }

    @Test
    void refusesMoreRequestsThanItHasCoresUntilOneHasReallyEnded() {
        CountDownLatch end = new CountDownLatch(1);
        for (int request = 0; request < Runtime.getRuntime().availableProcessors(); request++) {
            RefusedException tooLong =
                    catchThrowableOfType(RefusedException.class, () -> hasty.run(run -> wait(run, end)));
            assertThat(tooLong.problem().title()).isEqualTo("Too long for one request");
        }
        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> hasty.run(run -> "never begun"));
        assertThat(refused.problem().title()).isEqualTo("Busy");
        end.countDown();
    }

    @Test
    void takesTurnsAnyNumberOfTimes() {
        for (int request = 0; request < 100; request++) {
            assertThat(engine.<String>run(run -> {
                        run.onEveryCore(() -> {});
                        return "done";
                    }))
                    .isEqualTo("done");
        }
    }

    private static String wait(Engine.Run run, CountDownLatch until) {
        run.onOneCore(() -> await(until));
        return "waited";
    }

    private static void await(CountDownLatch until) {
        try {
            until.await();
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        }
    }
}
