package dapple.light.field;

import dapple.light.geometry.Vec;

/** The parallel chords of a disc, by the angle whose sine is their distance from the middle over the radius. */
abstract class PlateChords implements Emitter.Seen {
    final double height;
    private final Plate plate;
    private final double nearest;

    PlateChords(Plate plate, Vec place) {
        this.plate = plate;
        this.height = plate.height(place);
        this.nearest = plate.across.dot(place.minus(plate.centre));
    }

    @Override
    public double low() {
        return -high();
    }

    @Override
    public double high() {
        return height > 0 ? Math.PI / 2 : 0;
    }

    @Override
    public double width() {
        return 2 * plate.radius;
    }

    @Override
    public double fallOff() {
        return height;
    }

    @Override
    public double beside(double metres) {
        return Math.asin(Math.max(-1, Math.min(1, (nearest + metres) / plate.radius)));
    }

    /** A chord is as long as the cosine of its coordinate, and steps of the coordinate are as wide. */
    @Override
    public double weight(double at) {
        double cos = Math.cos(at);
        return cos * cos;
    }

    @Override
    public double weight(double from, double to) {
        return (to - from) / 2 + (Math.sin(2 * to) - Math.sin(2 * from)) / 4;
    }
}
