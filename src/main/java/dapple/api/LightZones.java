package dapple.api;

import dapple.api.Asked.Grid;
import dapple.api.Asked.Zones;
import dapple.api.FoundZones.OnSurface;
import dapple.api.FoundZones.Overlap;
import dapple.api.FoundZones.Patch;
import dapple.light.field.Facing;
import dapple.light.field.Scene;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.zone.BaskingPatch;
import dapple.light.zone.Footing;
import dapple.light.zone.Lattice;
import dapple.light.zone.Space;
import dapple.light.zone.SurfaceLattice;
import dapple.light.zone.SurfaceLight;
import dapple.light.zone.Survey;
import dapple.light.zone.Ways;
import dapple.light.zone.ZoneMap;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Computes the zones that a document asks for. */
final class LightZones {
    private final Scene scene;
    private final Zones zones;
    private final Engine.Run run;
    private final List<Quantity> quantities;
    private final List<Interval> targets;
    private final PlainLight plain;
    private final List<SurfaceLattice> surfaces;
    private final List<String> warnings = new ArrayList<>();

    LightZones(Scene scene, Zones zones, Engine.Run run) {
        this.scene = scene;
        this.zones = zones;
        this.run = run;
        List<Quantity> also = List.copyOf(zones.also().keySet());
        this.quantities =
                Stream.concat(Stream.of(zones.quantity()), also.stream()).toList();
        this.targets = Stream.concat(Stream.of(zones.target().basking()), zones.also().values().stream())
                .toList();
        this.plain = new PlainLight(scene, scene.lamps(), quantities, run);
        this.surfaces = zones.surfaces().stream()
                .map(surface -> SurfaceLattice.of(surface, zones.body().lengthMetres()))
                .toList();
    }

    /**
     * The zones of a grid.
     *
     * @param asked the quantity's amounts on the grid, as it was asked for
     */
    FoundZones on(Grid grid, IntToDoubleFunction asked) {
        Lattice lattice = grid.lattice();
        IntToDoubleFunction amounts = grid.facing() instanceof Facing.Maximum ? asked : brightest(lattice);
        Space space = space(lattice, amounts);
        ZoneMap map = onOneCore(() -> ZoneMap.of(space, amounts, zones.target()));
        Ways ways = new Ways(map);
        List<SurfaceLight> lights =
                surfaces.stream().map(surface -> light(surface, plain)).toList();
        boolean gradient = lights.isEmpty() ? isGradient(map, amounts, ways) : isGradient(lights, ways);
        Optional<OnSurface> onSurface =
                lights.isEmpty() ? Optional.empty() : Optional.of(new OnSurface(patch(lights, ways), overlaps()));
        warnOfErrors(plain);
        return new FoundZones(map.reachable(), map.shares(), gradient, onSurface, warnings);
    }

    private IntToDoubleFunction brightest(Lattice lattice) {
        double[] amounts = plain.at(List.of(zones.quantity()), lattice.size(), lattice::place)[0];
        return index -> amounts[index];
    }

    private Space space(Lattice lattice, IntToDoubleFunction amounts) {
        Survey survey = new Survey(
                lattice,
                scene.solids(),
                zones.reachMetres().map(reach -> new Footing(reach, scene.solids(), zones.surfaces())));
        plain.each(lattice.rows(), (own, row) -> survey.row(row, index -> !Double.isNaN(amounts.applyAsDouble(index))));
        return survey.space();
    }

    private SurfaceLight light(SurfaceLattice surface, PlainLight from) {
        return SurfaceLight.of(
                surface,
                targets,
                (lattice, places) -> from.at(quantities, places.length, at -> lattice.place(places[at])));
    }

    private boolean isGradient(ZoneMap map, IntToDoubleFunction amounts, Ways ways) {
        boolean lit = map.brightest().isPresent()
                && amounts.applyAsDouble(map.brightest().getAsInt())
                        >= zones.target().basking().low();
        return lit && onOneCore(ways::leadFromBrightest);
    }

    /** The animal rests on the surfaces that were named; the brightest place on them counts. */
    private boolean isGradient(List<SurfaceLight> lights, Ways ways) {
        SurfaceLight light = lights.stream()
                .max(Comparator.comparingDouble(SurfaceLight::most))
                .orElseThrow();
        return light.most() >= zones.target().basking().low() && onOneCore(() -> ways.leadFromBrightest(light));
    }

    private Optional<Patch> patch(List<SurfaceLight> lights, Ways ways) {
        Optional<BaskingPatch> largest = onOneCore(() -> largest(lights));
        return largest.map(patch -> {
            if (!ways.areBeside(patch)) {
                warnings.add("Zones: no reachable place of the grid lies beside the patch.");
            }
            return new Patch(
                    patch,
                    zones.surfaces().indexOf(patch.surface()),
                    onOneCore(() -> ways.leadOut(patch, zones.body())),
                    zones.also().isEmpty() ? Optional.empty() : Optional.of(patch.coincidence()));
        });
    }

    /** The largest patch of several surfaces, the first of several patches. */
    private Optional<BaskingPatch> largest(Collection<SurfaceLight> lights) {
        return lights.stream()
                .flatMap(light -> BaskingPatch.on(light, zones.body()).stream())
                .reduce((one, other) -> other.areaSquareMetres() > one.areaSquareMetres() ? other : one);
    }

    private Optional<List<Overlap>> overlaps() {
        return zones.overlap().map(most -> {
            Map<String, BaskingPatch> patches = new LinkedHashMap<>();
            for (Lamp lamp : scene.lamps()) {
                patchOf(lamp).ifPresent(patch -> patches.put(lamp.id(), patch));
            }
            return onOneCore(() -> overlaps(patches, most));
        });
    }

    /** What one lamp alone lights. */
    private Optional<BaskingPatch> patchOf(Lamp lamp) {
        PlainLight alone = new PlainLight(scene, List.of(lamp), List.of(zones.quantity()), run);
        List<SurfaceLight> lights =
                surfaces.stream().map(surface -> light(surface, alone)).toList();
        warnOfErrors(alone);
        return onOneCore(() -> largest(lights));
    }

    private static List<Overlap> overlaps(Map<String, BaskingPatch> patches, double most) {
        List<String> lamps = List.copyOf(patches.keySet());
        List<BaskingPatch> found = List.copyOf(patches.values());
        List<Overlap> overlaps = new ArrayList<>();
        for (int one = 0; one < lamps.size(); one++) {
            for (int other = one + 1; other < lamps.size(); other++) {
                double share = found.get(one).overlap(found.get(other));
                overlaps.add(new Overlap(lamps.get(one), lamps.get(other), share, share > most));
            }
        }
        return overlaps;
    }

    private void warnOfErrors(PlainLight light) {
        String warning = "Zones: the accuracy asked for was not reached everywhere.";
        if (light.error() > scene.accuracy() && !warnings.contains(warning)) {
            warnings.add(warning);
        }
    }

    private <T> T onOneCore(Supplier<T> work) {
        return PlainLight.onOneCore(run, work);
    }
}
