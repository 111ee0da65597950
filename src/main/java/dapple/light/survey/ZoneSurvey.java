package dapple.light.survey;

import dapple.light.field.Scene;
import dapple.light.quantity.Quantity;
import dapple.light.survey.FoundZones.Brightest;
import dapple.light.survey.FoundZones.Doubt;
import dapple.light.survey.FoundZones.ForBody;
import dapple.light.survey.FoundZones.OnSurface;
import dapple.light.survey.FoundZones.Patch;
import dapple.light.zone.Footing;
import dapple.light.zone.Lattice;
import dapple.light.zone.Space;
import dapple.light.zone.Survey;
import dapple.light.zone.Ways;
import dapple.light.zone.ZoneMap;
import dapple.light.zone.ZoneShares;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToDoubleFunction;

/** Finds the zones of a scene, and the patch on its resting surfaces. {@code docs/physics.md}, Zones */
public final class ZoneSurvey {
    private final Scene scene;
    private final Needs needs;
    private final Crew crew;
    private final Set<Doubt> doubts = new LinkedHashSet<>();

    private ZoneSurvey(Scene scene, Needs needs, Crew crew) {
        this.scene = scene;
        this.needs = needs;
        this.crew = crew;
    }

    /** What an animal finds on a lattice. */
    public static FoundZones of(Scene scene, Needs needs, Lattice lattice, Crew crew) {
        PlainLight plain = new PlainLight(scene, scene.lamps(), List.of(needs.quantity()), crew);
        List<Quantity> quantity = List.of(needs.quantity());
        double[] amounts = plain.at(quantity, lattice.size(), lattice::place)[0];
        return new ZoneSurvey(scene, needs, crew).on(lattice, index -> amounts[index], plain.error());
    }

    /**
     * What an animal finds on a lattice whose light is known.
     *
     * @param known where, and by index the largest irradiance on any plane; NaN where a place is not open
     */
    public static FoundZones of(Scene scene, Needs needs, Known known, Crew crew) {
        return new ZoneSurvey(scene, needs, crew).on(known.lattice(), known.amounts(), 0);
    }

    /** A lattice and its light. */
    public record Known(Lattice lattice, IntToDoubleFunction amounts) {}

    private FoundZones on(Lattice lattice, IntToDoubleFunction amounts, double error) {
        Space space = space(lattice, amounts);
        ZoneMap map = crew.alone(() -> ZoneMap.of(space, amounts, needs.target()));
        doubt(error);
        if (needs.surfaces().isEmpty()) {
            return found(map, amounts, isGradient(map, amounts), Optional.empty());
        }
        LitSurfaces surfaces = LitSurfaces.of(scene, needs, crew);
        OnSurface onSurface = new OnSurface(patch(surfaces, new Ways(map)), surfaces.overlaps());
        doubt(surfaces.error());
        return found(map, amounts, isGradient(surfaces, new Ways(map)), Optional.of(onSurface));
    }

    private Space space(Lattice lattice, IntToDoubleFunction amounts) {
        Survey survey = new Survey(
                lattice,
                scene.solids(),
                needs.reachMetres().map(reach -> new Footing(reach, scene.solids(), needs.surfaces())));
        crew.each(
                lattice.rows(),
                () -> survey,
                (shared, row) -> shared.row(row, index -> !Double.isNaN(amounts.applyAsDouble(index))));
        return survey.space();
    }

    private FoundZones found(
            ZoneMap map, IntToDoubleFunction amounts, boolean gradient, Optional<OnSurface> onSurface) {
        ZoneShares shares = crew.alone(() -> ZoneShares.of(map.space(), amounts, needs.target()));
        Optional<Brightest> brightest = map.brightest().stream()
                .mapToObj(index -> new Brightest(map.space().lattice().place(index), amounts.applyAsDouble(index)))
                .findFirst();
        return new FoundZones(shares, brightest, gradient, onSurface, List.copyOf(doubts));
    }

    private boolean isGradient(ZoneMap map, IntToDoubleFunction amounts) {
        boolean lit = map.brightest().isPresent()
                && isEnough(amounts.applyAsDouble(map.brightest().getAsInt()));
        return lit && crew.alone(() -> new Ways(map).leadFromBrightest());
    }

    /** The animal rests on the surfaces that were named; the brightest place on them counts. */
    private boolean isGradient(LitSurfaces surfaces, Ways ways) {
        return surfaces.brightest()
                .filter(brightest -> isEnough(brightest.amount()))
                .filter(brightest -> crew.alone(() -> ways.leadFrom(brightest)))
                .isPresent();
    }

    private boolean isEnough(double amount) {
        return amount >= needs.target().basking().low();
    }

    private Optional<Patch> patch(LitSurfaces surfaces, Ways ways) {
        return surfaces.patch().map(patch -> {
            if (!ways.areBeside(patch.found())) {
                doubts.add(Doubt.PATCH_OUT_OF_REACH);
            }
            return new Patch(
                    patch.found(),
                    patch.surface(),
                    needs.body()
                            .map(body -> new ForBody(
                                    patch.found().fits(), crew.alone(() -> ways.leadOut(patch.found(), body)))),
                    needs.also().isEmpty()
                            ? Optional.empty()
                            : Optional.of(patch.found().coincidence()));
        });
    }

    private void doubt(double error) {
        if (error > scene.accuracy()) {
            doubts.add(Doubt.LESS_ACCURATE);
        }
    }
}
