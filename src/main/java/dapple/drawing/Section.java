package dapple.drawing;

import dapple.light.geometry.Vec;

/**
 * An upright cut along the front: x to the right, z up.
 *
 * @param depthMetres distance from the front, y
 */
public record Section(double depthMetres) implements CutPlane {
    @Override
    public Place on(Vec place) {
        return new Place(place.x(), place.z());
    }

    @Override
    public Vec in(Place place) {
        return new Vec(place.acrossMetres(), depthMetres, place.upMetres());
    }

    @Override
    public double off(Vec place) {
        return place.y() - depthMetres;
    }
}
