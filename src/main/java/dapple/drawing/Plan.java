package dapple.drawing;

import dapple.light.geometry.Vec;

/**
 * A level cut: x to the right, y up on the paper, so that the front is below.
 *
 * @param heightMetres above the floor, z
 */
public record Plan(double heightMetres) implements CutPlane {
    @Override
    public Place on(Vec place) {
        return new Place(place.x(), place.y());
    }

    @Override
    public Vec in(Place place) {
        return new Vec(place.acrossMetres(), place.upMetres(), heightMetres);
    }

    @Override
    public double off(Vec place) {
        return place.z() - heightMetres;
    }
}
