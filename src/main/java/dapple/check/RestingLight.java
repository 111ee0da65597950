package dapple.check;

import dapple.enclosure.InnerSize;
import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.zone.RestingSurface;
import dapple.prediction.EnclosureScene;
import dapple.rig.RigScene;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What falls on the places where animals rest, each on the plane that has most: looked at every 5 cm, and more coarsely where
 * that would be more than about 150 places (steps are ours, no source).
 */
record RestingLight(List<Sample> samples) {
    private static final double LEAST_STEP_METRES = 0.05;
    private static final double PLACES = 150;

    /** Above the surface, so that what stands on it is not taken for open. */
    private static final double LIFT_METRES = 0.01;

    RestingLight {
        samples = List.copyOf(samples);
    }

    /** A place and its light. */
    record Sample(Vec place, Light light) {
        double amount(Quantity quantity) {
            return light.values().getOrDefault(quantity, 0.0);
        }
    }

    /** Empty where nothing is predicted, or the size is not known. */
    static RestingLight of(EnclosureScene scene) {
        return scene.size()
                .filter(size -> scene.rig().isPredictable())
                .map(size -> new RestingLight(samples(scene.rig(), size)))
                .orElse(new RestingLight(List.of()));
    }

    private static List<Sample> samples(RigScene rig, InnerSize size) {
        List<RestingSurface> surfaces = rig.restingSurfaces(size);
        double area = surfaces.stream()
                .mapToDouble(surface -> width(surface.within()) * depth(surface.within()))
                .sum();
        double step = Math.max(LEAST_STEP_METRES, Math.sqrt(area / PLACES));
        Field field = Field.of(rig.scene());
        return surfaces.stream()
                .flatMap(surface -> places(surface, step).stream())
                .filter(rig::isOpen)
                .map(place -> new Sample(place, field.at(new Receiver(place, new Facing.Maximum()))))
                .filter(sample -> sample.light().values().values().stream().allMatch(Double::isFinite))
                .toList();
    }

    private static double width(Filter.Rectangle within) {
        return within.highX() - within.lowX();
    }

    private static double depth(Filter.Rectangle within) {
        return within.highY() - within.lowY();
    }

    /** The middles of cells of about one step. */
    private static List<Vec> places(RestingSurface surface, double step) {
        Filter.Rectangle within = surface.within();
        long across = Math.max(1, Math.round(width(within) / step));
        long deep = Math.max(1, Math.round(depth(within) / step));
        List<Vec> places = new ArrayList<>();
        for (int y = 0; y < deep; y++) {
            for (int x = 0; x < across; x++) {
                places.add(new Vec(
                        within.lowX() + (x + 0.5) * width(within) / across,
                        within.lowY() + (y + 0.5) * depth(within) / deep,
                        surface.point().z() + LIFT_METRES));
            }
        }
        return places;
    }

    /** The place that has most of a quantity; empty where no place has any. */
    Optional<Sample> most(Quantity quantity) {
        return samples.stream()
                .filter(sample -> sample.amount(quantity) > 0)
                .max(Comparator.comparingDouble(sample -> sample.amount(quantity)));
    }
}
