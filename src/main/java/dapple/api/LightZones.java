package dapple.api;

import dapple.api.Asked.Grid;
import dapple.api.Asked.Zones;
import dapple.api.FoundZones.OnSurface;
import dapple.api.FoundZones.Patch;
import dapple.light.field.Facing;
import dapple.light.field.Scene;
import dapple.light.quantity.Quantity;
import dapple.light.zone.Footing;
import dapple.light.zone.Lattice;
import dapple.light.zone.Space;
import dapple.light.zone.Survey;
import dapple.light.zone.Ways;
import dapple.light.zone.ZoneMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/** Computes the zones that a document asks for. */
final class LightZones {
    private final Scene scene;
    private final Zones zones;
    private final Engine.Run run;
    private final List<String> warnings = new ArrayList<>();

    LightZones(Scene scene, Zones zones, Engine.Run run) {
        this.scene = scene;
        this.zones = zones;
        this.run = run;
    }

    /**
     * The zones of a grid.
     *
     * @param asked the quantity's amounts on the grid, as it was asked for
     */
    FoundZones on(Grid grid, IntToDoubleFunction asked) {
        PlainLight plain = new PlainLight(scene, scene.lamps(), List.of(zones.quantity()), run);
        Lattice lattice = grid.lattice();
        IntToDoubleFunction amounts = grid.facing() instanceof Facing.Maximum ? asked : brightest(plain, lattice);
        Space space = space(plain, lattice, amounts);
        ZoneMap map = PlainLight.onOneCore(run, () -> ZoneMap.of(space, amounts, zones.target()));
        warnOfErrors(plain.error());
        if (zones.surfaces().isEmpty()) {
            return found(map, isGradient(map, amounts), Optional.empty());
        }
        LitSurfaces surfaces = LitSurfaces.of(scene, zones, run);
        OnSurface onSurface = new OnSurface(patch(surfaces, new Ways(map)), surfaces.overlaps());
        warnOfErrors(surfaces.error());
        return found(map, isGradient(surfaces, new Ways(map)), Optional.of(onSurface));
    }

    private FoundZones found(ZoneMap map, boolean gradient, Optional<OnSurface> onSurface) {
        return new FoundZones(map.reachable(), map.shares(), gradient, onSurface, warnings);
    }

    private IntToDoubleFunction brightest(PlainLight plain, Lattice lattice) {
        List<Quantity> quantity = List.of(zones.quantity());
        double[] amounts = plain.at(quantity, lattice.size(), lattice::place)[0];
        return index -> amounts[index];
    }

    private Space space(PlainLight plain, Lattice lattice, IntToDoubleFunction amounts) {
        Survey survey = new Survey(
                lattice,
                scene.solids(),
                zones.reachMetres().map(reach -> new Footing(reach, scene.solids(), zones.surfaces())));
        plain.each(lattice.rows(), (own, row) -> survey.row(row, index -> !Double.isNaN(amounts.applyAsDouble(index))));
        return survey.space();
    }

    private boolean isGradient(ZoneMap map, IntToDoubleFunction amounts) {
        boolean lit = map.brightest().isPresent()
                && amounts.applyAsDouble(map.brightest().getAsInt())
                        >= zones.target().basking().low();
        return lit && PlainLight.onOneCore(run, () -> new Ways(map).leadFromBrightest());
    }

    /** The animal rests on the surfaces that were named; the brightest place on them counts. */
    private boolean isGradient(LitSurfaces surfaces, Ways ways) {
        return surfaces.brightest()
                .filter(brightest ->
                        brightest.amount() >= zones.target().basking().low())
                .filter(brightest -> PlainLight.onOneCore(run, () -> ways.leadFrom(brightest)))
                .isPresent();
    }

    private Optional<Patch> patch(LitSurfaces surfaces, Ways ways) {
        return surfaces.patch().map(patch -> {
            if (!ways.areBeside(patch.found())) {
                warnings.add("Zones: no reachable place of the grid lies beside the patch.");
            }
            return new Patch(
                    patch.found(),
                    patch.surface(),
                    PlainLight.onOneCore(run, () -> ways.leadOut(patch.found(), zones.body())),
                    zones.also().isEmpty()
                            ? Optional.empty()
                            : Optional.of(patch.found().coincidence()));
        });
    }

    private void warnOfErrors(double error) {
        String warning = "Zones: the accuracy asked for was not reached everywhere.";
        if (error > scene.accuracy() && !warnings.contains(warning)) {
            warnings.add(warning);
        }
    }
}
