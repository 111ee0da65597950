package dapple.overview;

import dapple.desk.Newest;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.judging.SharedLimits;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.SpeciesNeed;
import dapple.reading.JudgedReading;
import java.util.List;
import java.util.Optional;

/**
 * What several species in one enclosure ask of it, by UV index.
 *
 * @param shared what serves all and what nobody; empty unless two have a target
 */
record MixedExhibit(List<OfSpecies> species, Optional<SharedLimits> shared) {
    MixedExhibit {
        species = List.copyOf(species);
    }

    /** Empty where fewer than two species live. */
    static Optional<MixedExhibit> of(EnclosureScene scene, Newest newest) {
        if (scene.needs().size() < 2) {
            return Optional.empty();
        }
        List<Limits> limits = scene.needs().stream()
                .flatMap(need -> need.limits(Quantity.UV_INDEX).stream())
                .toList();
        return Optional.of(new MixedExhibit(
                scene.needs().stream().map(need -> of(need, scene, newest)).toList(),
                limits.size() < 2 ? Optional.empty() : Optional.of(SharedLimits.of(limits))));
    }

    private static OfSpecies of(SpeciesNeed need, EnclosureScene scene, Newest newest) {
        return new OfSpecies(
                need,
                need.limits(Quantity.UV_INDEX),
                scene.points().stream()
                        .filter(point -> point.role() != PointRole.KEEPER && scene.serves(point, need))
                        .map(point -> new At(
                                point, newest.at(point, Quantity.UV_INDEX).flatMap(JudgedReading::state)))
                        .toList());
    }

    /** One species with the points that serve it. */
    record OfSpecies(SpeciesNeed need, Optional<Limits> limits, List<At> points) {
        OfSpecies {
            points = List.copyOf(points);
        }
    }

    /**
     * A point and how its newest reading was judged, for whom it is gravest.
     *
     * @param state empty: never read, or not judged
     */
    record At(PointFacts point, Optional<State> state) {}
}
