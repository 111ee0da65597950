package dapple.desk;

import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.light.zone.RestingSurface;
import dapple.prediction.EnclosureScene;
import dapple.rig.CoverFacts;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The places in reach that come nearest to lamps, a few of them: the highest over the floor and over each top that animals
 * rest on, and below each lamp. Steps are ours, no source.
 */
final class InReach {
    /** Columns and rows over an enclosure. */
    static final int ACROSS = 6;

    static final int DEEP = 4;

    private static final int MOST = 40;

    /** As many share the room when an enclosure is looked at closely. */
    private static final double PLACES = 2000;

    private final EnclosureScene scene;
    private final InnerSize size;

    private InReach(EnclosureScene scene, InnerSize size) {
        this.scene = scene;
        this.size = size;
    }

    /**
     * Places where nothing stands, at most 40, each on the plane that has most.
     *
     * @param lamps the middles of lamps that hang or may hang
     */
    static List<Receiver> of(EnclosureScene scene, Collection<Vec> lamps) {
        return scene
                .size()
                .map(size -> new InReach(scene, size).places(lamps))
                .orElseGet(() -> points(scene).toList())
                .stream()
                .filter(scene.rig()::isOpen)
                .distinct()
                .limit(MOST)
                .map(place -> new Receiver(place, new Facing.Maximum()))
                .toList();
    }

    private static Stream<Vec> points(EnclosureScene scene) {
        return scene.points().stream()
                .filter(point -> point.role() != PointRole.KEEPER)
                .map(PointFacts::position)
                .flatMap(Optional::stream)
                .map(at -> new Vec(at.xMetres(), at.yMetres(), at.zMetres()));
    }

    private List<Vec> places(Collection<Vec> lamps) {
        List<Vec> places = new ArrayList<>(points(scene).toList());
        List<RestingSurface> surfaces = scene.rig().restingSurfaces(size);
        lamps.stream()
                .filter(this::isInside)
                .forEach(lamp -> places.add(new Vec(lamp.x(), lamp.y(), highest(top(surfaces, lamp)))));
        if (scene.reach().groundMetres().isPresent()) {
            surfaces.stream().skip(1).forEach(surface -> places.addAll(over(surface, 2, 2)));
        }
        places.addAll(over(surfaces.get(0), ACROSS, DEEP));
        return places;
    }

    private boolean isInside(Vec lamp) {
        return lamp.x() > 0 && lamp.x() < size.widthMetres() && lamp.y() > 0 && lamp.y() < size.depthMetres();
    }

    private static double top(List<RestingSurface> surfaces, Vec below) {
        return surfaces.stream()
                .filter(surface -> holds(surface.within(), below))
                .mapToDouble(surface -> surface.point().z())
                .max()
                .orElse(0);
    }

    private static boolean holds(Filter.Rectangle within, Vec place) {
        return place.x() >= within.lowX()
                && place.x() <= within.highX()
                && place.y() >= within.lowY()
                && place.y() <= within.highY();
    }

    private List<Vec> over(RestingSurface surface, int across, int deep) {
        Filter.Rectangle within = surface.within();
        List<Vec> places = new ArrayList<>();
        for (int row = 0; row < deep; row++) {
            for (int column = 0; column < across; column++) {
                places.add(new Vec(
                        middle(within.lowX(), within.highX(), column, across),
                        middle(within.lowY(), within.highY(), row, deep),
                        highest(surface.point().z())));
            }
        }
        return places;
    }

    /** The middle of one of some parts of a stretch. */
    static double middle(double low, double high, int part, int parts) {
        return low + (high - low) * (part + 0.5) / parts;
    }

    /** Where who stands at a height can be at the most: below the lid, and a third of a step of a close look from it. */
    private double highest(double standing) {
        double step = Math.cbrt(size.widthMetres() * size.depthMetres() * size.heightMetres() / PLACES);
        double below = Math.max(standing, lid(scene, size) - step / 3);
        return scene.reach()
                .groundMetres()
                .map(reach -> Math.min(below, standing + reach))
                .orElse(below);
    }

    /** The lowest cover over the whole of an enclosure, else its top. */
    static double lid(EnclosureScene scene, InnerSize size) {
        return scene.rig().rig().covers().stream()
                .map(CoverFacts::cover)
                .filter(cover -> cover.over().isEmpty())
                .flatMap(cover -> cover.heightMetres().stream())
                .filter(height -> height > 0 && height < size.heightMetres())
                .min(Double::compare)
                .orElse(size.heightMetres());
    }
}
