package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.geometry.Box;
import dapple.light.geometry.Capsule;
import dapple.light.geometry.Solid;
import dapple.light.geometry.UprightCylinder;
import dapple.light.geometry.Vec;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Areas by elementary geometry; round shapes have 32 sides, so that they lack up to 1 %. */
class OutlineTest {
    /** Corners are rounded to 1 nm. */
    private static final double EXACT = 1e-8;

    private static final double SIDES = 0.01;

    private static double area(List<Place> ring) {
        double twice = 0;
        for (int index = 0; index < ring.size(); index++) {
            Place one = ring.get(index);
            Place next = ring.get((index + 1) % ring.size());
            twice += one.acrossMetres() * next.upMetres() - next.acrossMetres() * one.upMetres();
        }
        return twice / 2;
    }

    private static double cut(Solid solid, CutPlane plane) {
        return area(new Outline(plane).cut(solid));
    }

    /** A square of 1 m turned by 45° is √2 m wide in its middle, and 0.4 m less at 0.2 m off it. */
    @Test
    void aTurnedBoxIsCutAsWideAsItIsThere() {
        Solid box = Box.of(new Vec(0, 0, 0), new Vec(1, 1, 0.5), 45);
        assertThat(cut(box, new Section(0.5))).isCloseTo(Math.sqrt(2) / 2, within(EXACT));
        assertThat(cut(box, new Section(0.7))).isCloseTo((Math.sqrt(2) - 0.4) / 2, within(EXACT));
        assertThat(cut(box, new Plan(0.2))).isCloseTo(1, within(EXACT));
    }

    /** A chord 0.06 off the middle of a radius of 0.1 is 0.16 long. */
    @Test
    void aCylinderIsCutAlongItsChord() {
        Solid cylinder = UprightCylinder.of(new Vec(0, 0, 0), 0.5, 0.1);
        assertThat(cut(cylinder, new Section(0.06))).isCloseTo(0.16 * 0.5, within(0.08 * SIDES));
        assertThat(cut(cylinder, new Plan(0.3))).isCloseTo(Math.PI * 0.01, within(Math.PI * 0.01 * SIDES));
    }

    /** A rod along x, 1 m between the middles of its ends: 2 r · 1 + π r². */
    @Test
    void aRodIsCutWithItsRoundEnds() {
        Solid rod = Capsule.of(new Vec(0, 0, 0.5), new Vec(1, 0, 0.5), 0.05);
        double expected = 0.1 + Math.PI * 0.0025;
        assertThat(cut(rod, new Section(0))).isCloseTo(expected, within(expected * SIDES));
        assertThat(area(new Outline(new Section(0.3)).seen(rod))).isCloseTo(expected, within(expected * SIDES));
    }

    @Test
    void whatThePlanePassesByIsNotCut() {
        Solid rod = Capsule.of(new Vec(0, 0, 0.5), new Vec(1, 0, 0.5), 0.05);
        assertThat(new Outline(new Section(0.06)).cut(rod)).isEmpty();
        assertThat(new Outline(new Plan(0.6)).cut(Box.of(new Vec(0, 0, 0), new Vec(1, 1, 0.5), 0)))
                .isEmpty();
    }
}
