package dapple.light.calibration;

import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A lamp on a bench, and what was read of it.
 *
 * @param lamp where it hung; its shape is where the fit starts, and what is held keeps what it says
 * @param readings 1 to 10,000, none in the middle of the lamp
 * @param held parameters that the readings are not asked for, not all of them; an emission that is held must be an output of the lamp
 */
public record Bench(Lamp lamp, List<BenchReading> readings, Set<Parameter> held) {
    private static final int MOST = 10_000;

    public Bench {
        readings = List.copyOf(readings);
        held = Set.copyOf(held);
        if (readings.isEmpty() || readings.size() > MOST) {
            throw new IllegalArgumentException("readings must be 1 to " + MOST + ", were " + readings.size());
        }
        for (BenchReading reading : readings) {
            if (!(reading.at().minus(lamp.centre()).length() > 0)) {
                throw new IllegalArgumentException("a reading must not lie in the middle of the lamp");
            }
        }
        for (Parameter parameter : held) {
            requireKnown(parameter, lamp);
        }
        if (free(lamp, readings, held).isEmpty()) {
            throw new IllegalArgumentException("at least one parameter must be free");
        }
    }

    private static void requireKnown(Parameter parameter, Lamp lamp) {
        boolean known = parameter instanceof Parameter.Emission emission
                ? lamp.outputs().stream().map(Output::quantity).anyMatch(emission.quantity()::equals)
                : Parameter.Shape.of(lamp.source()).contains(parameter);
        if (!known) {
            throw new IllegalArgumentException("the lamp has no " + parameter + " that could be held");
        }
    }

    /** What is to be found: the shape in the order of its parameters, then the emission of each quantity that was read. */
    List<Parameter> free() {
        return free(lamp, readings, held);
    }

    private static List<Parameter> free(Lamp lamp, List<BenchReading> readings, Set<Parameter> held) {
        Set<Parameter> free = new LinkedHashSet<>();
        Arrays.stream(Parameter.Shape.values())
                .filter(Parameter.Shape.of(lamp.source())::contains)
                .forEach(free::add);
        readings.forEach(reading -> free.add(new Parameter.Emission(reading.quantity())));
        free.removeAll(held);
        return List.copyOf(free);
    }

    Set<Quantity> quantities() {
        return readings.stream().map(BenchReading::quantity).collect(Collectors.toSet());
    }
}
