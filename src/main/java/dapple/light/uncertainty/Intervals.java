package dapple.light.uncertainty;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The 95 % intervals of the light of a scene, never below 0.
 *
 * <p>Independent contributions add as squares, U = 2 u [jcgm100, eq. 10]: readings and the model lamp by lamp, the
 * receiver's place, the height of each lamp. The calibration of the meter is shared by all lamps, so that it adds up over
 * them [jcgm100, eq. 16]. What a place contributes is taken from the engine at displaced places, the way up apart from
 * the way down: for light that changes evenly that is the law of propagation, and beside the edge of a shadow, where
 * that law would see nothing, the interval reaches from light to shade.
 *
 * <p>Not for two threads at once: each makes its own with {@link #another()}.
 */
public final class Intervals {
    private static final double FACTOR = UncertainAmount.COVERAGE_FACTOR;

    private final Scene scene;
    private final SceneUncertainty uncertainty;
    private final boolean edges;
    private final List<Map<Quantity, Double>> shares;
    private final List<Raised> raised;

    /**
     * All lamps, each higher or lower by some times its u: lamps do not shade each other, so that each stands for itself.
     *
     * @param isFree of each lamp, whether it can hang there
     */
    private record Raised(double times, Field field, List<Boolean> isFree) {
        Raised another() {
            return new Raised(times, field.another(), isFree);
        }
    }

    private Intervals(
            Scene scene, SceneUncertainty uncertainty, List<Map<Quantity, Double>> shares, List<Raised> raised) {
        this.scene = scene;
        this.uncertainty = uncertainty;
        this.edges = hasEdges(scene);
        this.shares = shares;
        this.raised = raised;
    }

    private static boolean hasEdges(Scene scene) {
        return !scene.solids().isEmpty()
                || scene.filters().stream()
                        .anyMatch(filter -> filter.plane().over().isPresent());
    }

    public static Intervals of(Scene scene, SceneUncertainty uncertainty) {
        return of(scene, scene.lamps().stream().map(OutputUncertainty::shares).toList(), uncertainty);
    }

    /**
     * With readings that are not known alike.
     *
     * @param readings relative standard uncertainty of the readings of each quantity, lamp by lamp in the order of the
     *     scene; {@link SceneUncertainty#reading()} multiplies them
     */
    public static Intervals of(Scene scene, SceneUncertainty uncertainty, List<Map<Quantity, Double>> readings) {
        List<Map<Quantity, Double>> shares = new ArrayList<>();
        for (int lamp = 0; lamp < readings.size(); lamp++) {
            Map<Quantity, Double> own = new EnumMap<>(Quantity.class);
            Map<Quantity, Double> known = readings.get(lamp);
            OutputUncertainty.shares(scene.lamps().get(lamp))
                    .forEach((quantity, share) -> own.put(quantity, share * known.getOrDefault(quantity, 1.0)));
            shares.add(own);
        }
        return of(scene, shares, uncertainty);
    }

    private static Intervals of(Scene scene, List<Map<Quantity, Double>> shares, SceneUncertainty uncertainty) {
        List<Double> steps =
                uncertainty.positionMetres() > 0 ? Displacements.steps(hasEdges(scene)) : List.<Double>of();
        List<Raised> raised = steps.stream()
                .map(step -> raised(scene, step, uncertainty.positionMetres()))
                .toList();
        return new Intervals(scene, uncertainty, shares, raised);
    }

    public Intervals another() {
        return new Intervals(
                scene, uncertainty, shares, raised.stream().map(Raised::another).toList());
    }

    private static Raised raised(Scene scene, double step, double positionMetres) {
        Vec way = Vec.UP.times(step * positionMetres);
        List<Lamp> lamps = scene.lamps().stream().map(lamp -> moved(lamp, way)).toList();
        return new Raised(
                Math.abs(step),
                Field.of(new Scene(scene.accuracy(), lamps, scene.filters(), scene.solids())),
                lamps.stream().map(lamp -> scene.solidAround(lamp.centre()) < 0).toList());
    }

    /** Together with where it was read. */
    private static Lamp moved(Lamp lamp, Vec way) {
        List<Output> outputs =
                lamp.outputs().stream().map(output -> moved(output, way)).toList();
        return new Lamp(lamp.id(), lamp.centre().plus(way), lamp.aim(), lamp.source(), outputs);
    }

    private static Output moved(Output output, Vec way) {
        return output instanceof Output.Reading read
                ? new Output.Reading(read.quantity(), read.reading(), read.at().plus(way), read.facing(), read.factor())
                : output;
    }

    /**
     * The interval of each quantity at a receiver.
     *
     * @param field of the same scene
     * @param light what the field says at the receiver
     */
    public Map<Quantity, Interval> at(Field field, Receiver receiver, Light light) {
        Map<Quantity, Spread> spreads = new EnumMap<>(Quantity.class);
        light.values().keySet().forEach(quantity -> spreads.put(quantity, ofOutput(quantity, light.byLamp())));
        if (uncertainty.positionMetres() > 0) {
            addPlace(field, receiver, light, spreads);
            Map<Facing, List<Light>> seen = new HashMap<>();
            spreads.forEach((quantity, spread) -> {
                Receiver kept = new Receiver(receiver.place(), facing(light, quantity));
                addHeights(quantity, light, seen.computeIfAbsent(kept.facing(), unused -> atRaised(kept)), spread);
            });
        }
        Map<Quantity, Interval> intervals = new EnumMap<>(Quantity.class);
        spreads.forEach((quantity, spread) ->
                intervals.put(quantity, spread.around(light.values().getOrDefault(quantity, 0.0))));
        return intervals;
    }

    /** Readings and model by lamp, the meter for all together. */
    private Spread ofOutput(Quantity quantity, List<Map<Quantity, Double>> byLamp) {
        Spread spread = new Spread();
        double sum = 0;
        for (int lamp = 0; lamp < shares.size(); lamp++) {
            double amount = byLamp.get(lamp).getOrDefault(quantity, 0.0);
            spread.add(FACTOR * uncertainty.reading() * shares.get(lamp).getOrDefault(quantity, 0.0) * amount);
            spread.add(FACTOR * uncertainty.model() * amount);
            sum += amount;
        }
        spread.add(FACTOR * uncertainty.meter() * sum);
        return spread;
    }

    private void addPlace(Field field, Receiver receiver, Light light, Map<Quantity, Spread> spreads) {
        List<Map<Quantity, List<Probe>>> axes = new ArrayList<>();
        for (Vec axis : Displacements.axes()) {
            List<Vec> ways =
                    Displacements.steps(edges).stream().map(axis::times).toList();
            axes.add(probes(field, receiver, light, ways));
        }
        Map<Quantity, List<Probe>> around = probes(field, receiver, light, Displacements.around(edges));
        spreads.forEach((quantity, spread) -> {
            axes.forEach(axis -> spread.add(axis.getOrDefault(quantity, List.of())));
            spread.lookFor(around.getOrDefault(quantity, List.of()));
        });
    }

    /** The light when the receiver is moved, as far as it can be there. */
    private Map<Quantity, List<Probe>> probes(Field field, Receiver receiver, Light light, List<Vec> ways) {
        Map<Quantity, List<Probe>> probes = new EnumMap<>(Quantity.class);
        for (Vec way : ways) {
            Vec place = receiver.place().plus(way.times(uncertainty.positionMetres()));
            if (isOpen(place, receiver.facing())) {
                Light there = field.at(new Receiver(place, receiver.facing()));
                light.values().forEach((quantity, value) -> {
                    double difference = there.values().getOrDefault(quantity, value) - value;
                    addFinite(
                            probes.computeIfAbsent(quantity, unused -> new ArrayList<>()),
                            new Probe(
                                    way.length(),
                                    difference,
                                    () -> ofOutput(quantity, there.byLamp()).expanded()));
                });
            }
        }
        return probes;
    }

    /** On a source there is no finite amount to compare with. */
    private static void addFinite(List<Probe> probes, Probe probe) {
        if (Double.isFinite(probe.difference())) {
            probes.add(probe);
        }
    }

    private boolean isOpen(Vec place, Facing facing) {
        boolean hasDirection = !(facing instanceof Facing.TowardsLamp towards)
                || scene.lamps().stream()
                        .filter(lamp -> lamp.id().equals(towards.id()))
                        .noneMatch(lamp -> lamp.centre().minus(place).length() == 0);
        return hasDirection && scene.solidAround(place) < 0;
    }

    /** The light of each step of the lamps' heights. */
    private List<Light> atRaised(Receiver receiver) {
        return raised.stream().map(moved -> moved.field().at(receiver)).toList();
    }

    /** The light when one lamp hangs higher or lower, looked at in the same direction. */
    private void addHeights(Quantity quantity, Light light, List<Light> moved, Spread spread) {
        for (int lamp = 0; lamp < light.byLamp().size(); lamp++) {
            List<Probe> probes = new ArrayList<>();
            for (int step = 0; step < raised.size(); step++) {
                if (raised.get(step).isFree().get(lamp)) {
                    Map<Quantity, Double> there = moved.get(step).byLamp().get(lamp);
                    addFinite(probes, height(quantity, raised.get(step).times(), light, lamp, there));
                }
            }
            spread.add(probes);
        }
    }

    private Probe height(Quantity quantity, double times, Light light, int lamp, Map<Quantity, Double> there) {
        double amount = light.byLamp().get(lamp).getOrDefault(quantity, 0.0);
        return new Probe(times, there.getOrDefault(quantity, amount) - amount, () -> {
            List<Map<Quantity, Double>> byLamp = new ArrayList<>(light.byLamp());
            byLamp.set(lamp, there);
            return ofOutput(quantity, byLamp).expanded();
        });
    }

    private static Facing facing(Light light, Quantity quantity) {
        return light.facing()
                .<Facing>map(directions -> new Facing.Direction(directions.getOrDefault(quantity, Vec.UP)))
                .orElse(new Facing.AllRound());
    }
}
