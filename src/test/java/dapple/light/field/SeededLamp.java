package dapple.light.field;

import dapple.light.field.BruteForce.Effort;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** A random lamp as the engine knows it and as brute force does. */
final class SeededLamp {
    /** Lines bare and with a reflector, cylinders, discs, rectangles; points and faces with three kinds of beams. */
    static final int KINDS = 11;

    private static final List<Lobe.Kind> BEAMS = List.of(Lobe.Kind.EXPONENT, Lobe.Kind.BEAM_ANGLE, Lobe.Kind.TABLE);

    private static final Effort CALIBRATING = new Effort(1e-6, 9);

    private final Lamp lamp;
    private final Surface surface;
    private final Map<Quantity, Double> scales = new ConcurrentHashMap<>();

    SeededLamp(Lamp lamp, Surface surface) {
        this.lamp = lamp;
        this.surface = surface;
    }

    Lamp lamp() {
        return lamp;
    }

    Surface surface() {
        return surface;
    }

    static SeededLamp random(String id, int kind, Vec centre, Vec aim, Chance chance) {
        Surface surface = surface(kind, centre, aim, aim.anyPerpendicular(), chance);
        return switch (kind) {
            case 0, 1 -> line(id, kind == 1, (Surface.Tube) surface, chance);
            case 2, 3, 4 -> plain(id, aim, surface, chance);
            default -> beam(id, kind, centre, aim, chance);
        };
    }

    /** The plain surfaces, and a line that has no reflector yet. */
    private static Surface surface(int kind, Vec centre, Vec aim, Vec along, Chance chance) {
        return switch (kind) {
            case 0, 1 -> new Surface.Tube(centre, along, chance.logBetween(0.05, 1.5), aim, cosine -> 1);
            case 2 -> new Surface.Barrel(centre, along, chance.logBetween(0.04, 1.2), chance.logBetween(0.004, 0.04));
            case 3 -> {
                double radius = chance.logBetween(0.005, 0.3);
                yield new Surface.Round(
                        centre, aim, radius, cosine -> Math.max(0, cosine), Math.PI * radius * radius, 0);
            }
            default -> new Surface.Sheet(centre, along, chance.logBetween(0.02, 1), chance.logBetween(0.02, 1), aim);
        };
    }

    private static SeededLamp line(String id, boolean reflects, Surface.Tube tube, Chance chance) {
        double lobe = chance.between(0.5, 3);
        double spill = chance.between(0, 0.2);
        Optional<Source.Reflector> reflector =
                reflects ? Optional.of(new Source.Reflector(lobe, spill)) : Optional.empty();
        Surface surface = reflects
                ? new Surface.Tube(
                        tube.centre(),
                        tube.along(),
                        tube.length(),
                        tube.aim(),
                        cosine -> spill + (1 - spill) * Math.exp(lobe * Math.log(Math.max(0, cosine))))
                : tube;
        return made(
                id,
                tube.centre(),
                tube.aim(),
                new Source.Line(tube.length(), tube.along(), reflector),
                surface,
                chance);
    }

    private static SeededLamp plain(String id, Vec aim, Surface surface, Chance chance) {
        if (surface instanceof Surface.Barrel barrel) {
            Source source = new Source.Cylinder(barrel.length(), barrel.along(), barrel.radius());
            return made(id, barrel.centre(), aim, source, surface, chance);
        }
        if (surface instanceof Surface.Sheet sheet) {
            Source source = new Source.Rectangle(sheet.length(), sheet.along(), sheet.width());
            return made(id, sheet.centre(), aim, source, surface, chance);
        }
        Surface.Round disc = (Surface.Round) surface;
        return made(id, disc.centre(), aim, new Source.Disc(disc.radius()), surface, chance);
    }

    private static SeededLamp beam(String id, int kind, Vec centre, Vec aim, Chance chance) {
        Lobe lobe = Lobe.random(BEAMS.get((kind - 5) % 3), chance);
        if (kind < 8) {
            Surface spot = new Surface.Spot(centre, aim, lobe.towards());
            return made(id, centre, aim, new Source.Spot(lobe.beam()), spot, chance);
        }
        double radius = chance.logBetween(0.005, 0.1);
        Surface face = new Surface.Round(centre, aim, radius, lobe.towards(), 1, lobe.jump());
        return made(id, centre, aim, new Source.Face(lobe.beam(), radius), face, chance);
    }

    /** With an emission or a reading for each quantity. */
    private static SeededLamp made(String id, Vec centre, Vec aim, Source source, Surface surface, Chance chance) {
        List<Output> outputs = new ArrayList<>();
        for (Quantity quantity : List.of(Quantity.UV_INDEX, Quantity.ILLUMINANCE)) {
            double factor = chance.between(0.3, 1);
            double amount = chance.logBetween(0.5, 50);
            double distance = chance.between(0.1, 0.6);
            Vec at = centre.plus(aim.times(distance));
            outputs.add(
                    chance.oneIn(2)
                            ? new Output.Emission(quantity, amount, factor)
                            : new Output.Reading(quantity, amount, at, aim.times(-1), factor));
        }
        return new SeededLamp(new Lamp(id, centre, aim, source, outputs), surface);
    }

    /** Emission of the quantity, by brute force where it is known by a reading. */
    double scale(Quantity quantity) {
        return scales.computeIfAbsent(quantity, this::emission);
    }

    private double emission(Quantity quantity) {
        for (Output output : lamp.outputs()) {
            if (output.quantity() == quantity && output instanceof Output.Reading reading) {
                BruteForce alone = new BruteForce(List.of(), List.of(), quantity, CALIBRATING);
                return reading.reading()
                        * reading.factor()
                        / alone.at(surface, reading.at(), Optional.of(reading.facing()))
                                .seen();
            }
            if (output.quantity() == quantity && output instanceof Output.Emission emission) {
                return emission.amount() * emission.factor();
            }
        }
        return 0;
    }

    /** With its emission of one quantity alone. */
    SeededLamp fitted(Quantity quantity) {
        return giving(List.of(new Output.Emission(quantity, scale(quantity), 1)));
    }

    SeededLamp emitting(double amount) {
        return giving(List.of(
                new Output.Emission(Quantity.UV_INDEX, amount, 1),
                new Output.Emission(Quantity.ILLUMINANCE, amount, 1)));
    }

    private SeededLamp giving(List<Output> outputs) {
        return new SeededLamp(new Lamp(lamp.id(), lamp.centre(), lamp.aim(), lamp.source(), outputs), surface);
    }

    /** Whether it has no width, so that its shade is exact. */
    boolean isThin() {
        return surface.dimensions() < 2;
    }
}
