package dapple.light.survey;

import dapple.light.field.Scene;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.survey.FoundZones.Overlap;
import dapple.light.zone.BaskingPatch;
import dapple.light.zone.Body;
import dapple.light.zone.Spot;
import dapple.light.zone.SurfaceLattice;
import dapple.light.zone.SurfaceLight;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What lies on the resting surfaces of a scene. They are lit one by one, since each may have half a million places. */
final class LitSurfaces {
    private final Scene scene;
    private final Needs needs;
    private final Crew crew;
    private final List<SurfaceLattice> surfaces;
    private Optional<SurfaceLight.Brightest> brightest = Optional.empty();
    private Optional<Found> largest = Optional.empty();
    private double error;

    private LitSurfaces(Scene scene, Needs needs, Crew crew) {
        this.scene = scene;
        this.needs = needs;
        this.crew = crew;
        double length = needs.body().map(Body::lengthMetres).orElse(Double.POSITIVE_INFINITY);
        this.surfaces = needs.surfaces().stream()
                .map(surface -> SurfaceLattice.of(surface, length, needs.grain()))
                .toList();
    }

    /** The patch, and the number of its surface. */
    record Patch(BaskingPatch found, int surface) {}

    /** Looks at all surfaces. */
    static LitSurfaces of(Scene scene, Needs needs, Crew crew) {
        LitSurfaces lit = new LitSurfaces(scene, needs, crew);
        lit.look();
        return lit;
    }

    private void look() {
        List<Quantity> quantities = Stream.concat(Stream.of(needs.quantity()), needs.also().keySet().stream())
                .toList();
        List<Interval> targets = Stream.concat(Stream.of(needs.target().basking()), needs.also().values().stream())
                .toList();
        PlainLight plain = new PlainLight(scene, scene.lamps(), quantities, crew);
        for (int surface = 0; surface < surfaces.size(); surface++) {
            SurfaceLight light = light(surfaces.get(surface), plain, quantities, targets);
            consider(light, surface);
        }
        error = Math.max(error, plain.error());
    }

    private static SurfaceLight light(
            SurfaceLattice surface, PlainLight from, List<Quantity> quantities, List<Interval> targets) {
        return SurfaceLight.of(
                surface,
                targets,
                (lattice, places) -> from.at(quantities, places.length, at -> lattice.place(places[at])));
    }

    /** Keeps the brightest place and the largest patch, the first of several. */
    private void consider(SurfaceLight light, int surface) {
        Optional<SurfaceLight.Brightest> most = light.brightest();
        if (most.isPresent()
                && (brightest.isEmpty() || most.get().amount() > brightest.get().amount())) {
            brightest = most;
        }
        Optional<Spot> spot = crew.alone(() -> Spot.largestOn(light));
        if (spot.isPresent()
                && (largest.isEmpty()
                        || spot.get().areaSquareMetres() > largest.get().spot().areaSquareMetres())) {
            largest = Optional.of(new Found(light, spot.get(), surface));
        }
    }

    private record Found(SurfaceLight light, Spot spot, int surface) {}

    Optional<SurfaceLight.Brightest> brightest() {
        return brightest;
    }

    Optional<Patch> patch() {
        return largest.map(found -> new Patch(
                crew.alone(() -> BaskingPatch.of(found.light(), found.spot(), needs.body())), found.surface()));
    }

    /** The overlaps of what each two lamps light alone; empty unless they are asked for. */
    Optional<List<Overlap>> overlaps() {
        return needs.overlap().map(most -> {
            Map<String, Spot> spots = new LinkedHashMap<>();
            scene.lamps().stream()
                    .filter(this::gives)
                    .forEach(lamp -> spotOf(lamp).ifPresent(spot -> spots.put(lamp.id(), spot)));
            return crew.alone(() -> overlaps(spots, most));
        });
    }

    private boolean gives(Lamp lamp) {
        return lamp.outputs().stream().anyMatch(output -> output.quantity() == needs.quantity());
    }

    /** The largest spot of one lamp alone. */
    private Optional<Spot> spotOf(Lamp lamp) {
        List<Quantity> quantities = List.of(needs.quantity());
        List<Interval> targets = List.of(needs.target().basking());
        PlainLight alone = new PlainLight(scene, List.of(lamp), quantities, crew);
        Optional<Spot> best = Optional.empty();
        for (SurfaceLattice surface : surfaces) {
            SurfaceLight light = light(surface, alone, quantities, targets);
            Optional<Spot> spot = crew.alone(() -> Spot.largestOn(light));
            best = larger(best, spot);
        }
        error = Math.max(error, alone.error());
        return best;
    }

    private static Optional<Spot> larger(Optional<Spot> one, Optional<Spot> other) {
        return Stream.of(one, other)
                .flatMap(Optional::stream)
                .reduce((first, second) -> second.areaSquareMetres() > first.areaSquareMetres() ? second : first);
    }

    private static List<Overlap> overlaps(Map<String, Spot> spots, double most) {
        List<String> lamps = List.copyOf(spots.keySet());
        List<Spot> found = List.copyOf(spots.values());
        List<Overlap> overlaps = new ArrayList<>();
        for (int one = 0; one < lamps.size(); one++) {
            for (int other = one + 1; other < lamps.size(); other++) {
                double share = found.get(one).overlap(found.get(other));
                overlaps.add(new Overlap(lamps.get(one), lamps.get(other), share, share > most));
            }
        }
        return overlaps;
    }

    /** The largest relative error so far. */
    double error() {
        return error;
    }
}
