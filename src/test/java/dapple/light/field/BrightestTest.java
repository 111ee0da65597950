package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lamps of all shapes all round a place, so that much of the light lies behind any plane. */
class BrightestTest {
    private static final double ACCURACY = 1e-4;

    /** Directions that are tried anywhere, and then near the best of them. */
    private static final int ANYWHERE = 500;

    private static final int NEAR = 200;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 80);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noDirectionTriedHasMoreThanTheOneWithMost(long seed) {
        Random random = new Random(seed);
        Field field = Field.of(new Scene(ACCURACY, lampsAllRound(random), List.of(), List.of()));
        Vec place = any(random).times(0.15);
        double most = amount(field, place, new Facing.Maximum());
        assertThat(bestTried(field, place, random)).isLessThanOrEqualTo(most * (1 + ACCURACY));
    }

    private static double bestTried(Field field, Vec place, Random random) {
        Vec best = Vec.UP;
        double most = 0;
        double reach = 0.1;
        for (int trial = 0; trial < ANYWHERE + NEAR; trial++) {
            Vec step = any(random);
            Vec direction = trial < ANYWHERE
                    ? step.unit()
                    : best.plus(step.times(reach)).unit();
            double amount = amount(field, place, new Facing.Direction(direction));
            reach = amount > most || trial < ANYWHERE ? reach : 0.98 * reach;
            best = amount > most ? direction : best;
            most = Math.max(most, amount);
        }
        return most;
    }

    private static double amount(Field field, Vec place, Facing facing) {
        return field.at(new Receiver(place, facing)).values().getOrDefault(Quantity.UV_INDEX, 0.0);
    }

    private static List<Lamp> lampsAllRound(Random random) {
        List<Lamp> lamps = new ArrayList<>();
        int count = 1 + random.nextInt(5);
        for (int index = 0; index < count; index++) {
            Vec centre = any(random).times(0.5);
            Vec aim = any(random).times(0.2).minus(centre).unit();
            Output output = new Output.Emission(Quantity.UV_INDEX, 0.2 + random.nextDouble(), 1);
            lamps.add(new Lamp("lamp-" + index, centre, aim, source(random, aim), List.of(output)));
        }
        return lamps;
    }

    private static Source source(Random random, Vec aim) {
        double size = 0.1 + random.nextDouble();
        Vec along = aim.anyPerpendicular();
        return switch (random.nextInt(6)) {
            case 0 -> new Source.Line(size, along, Optional.empty());
            case 1 -> new Source.Cylinder(size, along, 0.02 * size);
            case 2 -> new Source.Disc(0.2 * size);
            case 3 -> new Source.Rectangle(size, along, 0.4 * size);
            case 4 -> new Source.Face(new Beam.Power(10 * size), 0.03);
            default -> new Source.Spot(new Beam.Power(10 * size));
        };
    }

    private static Vec any(Random random) {
        return new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    }
}
