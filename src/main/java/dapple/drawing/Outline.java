package dapple.drawing;

import dapple.light.geometry.Bounds;
import dapple.light.geometry.Capsule;
import dapple.light.geometry.Solid;
import dapple.light.geometry.UprightCylinder;
import dapple.light.geometry.Vec;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** The outlines of solids on a plane, as convex rings. */
final class Outline {
    /** Round shapes are drawn with so many sides. */
    private static final int SIDES = 32;

    /** Places are told apart from 1 nm on. */
    private static final double NEAR = 1e-9;

    private final CutPlane plane;

    Outline(CutPlane plane) {
        this.plane = plane;
    }

    /** What is seen of a solid, whether or not the plane cuts it. */
    List<Place> seen(Solid solid) {
        return ring(edge(solid).stream().map(plane::on).toList());
    }

    /** What the plane cuts of a solid; empty if it passes by. */
    List<Place> cut(Solid solid) {
        if (solid instanceof Capsule capsule) {
            return ring(cutBalls(capsule));
        }
        List<Vec> corners = edge(solid);
        List<Place> found = new ArrayList<>();
        for (int one = 0; one < corners.size(); one++) {
            for (int other = one + 1; other < corners.size(); other++) {
                addCrossing(corners.get(one), corners.get(other), found);
            }
        }
        return ring(found);
    }

    private void addCrossing(Vec one, Vec other, List<Place> found) {
        double from = plane.off(one);
        double to = plane.off(other);
        if (from * to <= 0 && from != to) {
            found.add(plane.on(one.plus(other.minus(one).times(from / (from - to)))));
        }
    }

    /** Points of which a solid is the convex hull. */
    private static List<Vec> edge(Solid solid) {
        if (solid instanceof UprightCylinder cylinder) {
            return rims(cylinder.bounds());
        }
        return solid instanceof Capsule capsule ? ends(capsule) : solid.hull().corners();
    }

    private static List<Vec> rims(Bounds bounds) {
        Vec middle = bounds.least().plus(bounds.greatest()).times(0.5);
        double radius = (bounds.greatest().x() - bounds.least().x()) / 2;
        List<Vec> rims = new ArrayList<>();
        for (Place way : circle(radius)) {
            rims.add(new Vec(
                    middle.x() + way.acrossMetres(),
                    middle.y() + way.upMetres(),
                    bounds.least().z()));
            rims.add(new Vec(
                    middle.x() + way.acrossMetres(),
                    middle.y() + way.upMetres(),
                    bounds.greatest().z()));
        }
        return rims;
    }

    /** Both ends as circles in each of the two planes that are drawn. */
    private static List<Vec> ends(Capsule capsule) {
        List<Vec> ends = new ArrayList<>();
        for (Vec end : List.of(capsule.from(), capsule.to())) {
            for (Place way : circle(capsule.radiusMetres())) {
                ends.add(end.plus(new Vec(way.acrossMetres(), 0, way.upMetres())));
                ends.add(end.plus(new Vec(way.acrossMetres(), way.upMetres(), 0)));
            }
        }
        return ends;
    }

    /** A capsule is all balls along its segment. */
    private List<Place> cutBalls(Capsule capsule) {
        List<Place> found = new ArrayList<>();
        for (int part = 0; part <= SIDES; part++) {
            Vec middle = capsule.from().plus(capsule.to().minus(capsule.from()).times((double) part / SIDES));
            double off = plane.off(middle);
            double square = capsule.radiusMetres() * capsule.radiusMetres() - off * off;
            if (square > 0) {
                Place on = plane.on(middle);
                circle(Math.sqrt(square)).forEach(way -> found.add(on.plus(way.acrossMetres(), way.upMetres())));
            }
        }
        return found;
    }

    private static List<Place> circle(double radius) {
        List<Place> circle = new ArrayList<>();
        for (int side = 0; side < SIDES; side++) {
            double angle = 2 * Math.PI * side / SIDES;
            circle.add(new Place(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        return circle;
    }

    /** The convex hull of some places, as a ring; empty if they have no area. */
    static List<Place> ring(List<Place> places) {
        List<Place> sorted = places.stream()
                .map(Outline::rounded)
                .distinct()
                .sorted(Comparator.comparingDouble(Place::acrossMetres).thenComparingDouble(Place::upMetres))
                .toList();
        List<Place> reversed = new ArrayList<>(sorted);
        Collections.reverse(reversed);
        List<Place> lower = half(sorted);
        List<Place> upper = half(reversed);
        if (lower.size() + upper.size() < 5) {
            return List.of();
        }
        List<Place> ring = new ArrayList<>(lower.subList(0, lower.size() - 1));
        ring.addAll(upper.subList(0, upper.size() - 1));
        return ring;
    }

    /** So that places that should lie one over the other are put in order by their height. */
    private static Place rounded(Place place) {
        return new Place(Math.rint(place.acrossMetres() / NEAR) * NEAR, Math.rint(place.upMetres() / NEAR) * NEAR);
    }

    private static List<Place> half(List<Place> sorted) {
        List<Place> half = new ArrayList<>();
        for (Place place : sorted) {
            while (half.size() > 1 && !turnsLeft(half.get(half.size() - 2), half.get(half.size() - 1), place)) {
                half.remove(half.size() - 1);
            }
            half.add(place);
        }
        return half;
    }

    private static boolean turnsLeft(Place from, Place by, Place to) {
        double turn = (by.acrossMetres() - from.acrossMetres()) * (to.upMetres() - from.upMetres())
                - (by.upMetres() - from.upMetres()) * (to.acrossMetres() - from.acrossMetres());
        return turn > 1e-12;
    }
}
