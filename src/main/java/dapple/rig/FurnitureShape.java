package dapple.rig;

import dapple.light.geometry.Box;
import dapple.light.geometry.Capsule;
import dapple.light.geometry.Solid;
import dapple.light.geometry.UprightCylinder;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;

/** The shape of a thing that shades, m. */
public sealed interface FurnitureShape {
    Solid solid();

    FurnitureKind kind();

    /**
     * A box, turned about the vertical through its middle.
     *
     * @param least its corner at the front, left and bottom before it is turned
     * @param yawDegrees counter-clockwise seen from above
     */
    record Block(Vec least, Vec greatest, double yawDegrees) implements FurnitureShape {
        public Block {
            Check.within("yaw", yawDegrees, -360, 360, "°");
            Box.of(least, greatest, yawDegrees);
        }

        @Override
        public FurnitureKind kind() {
            return FurnitureKind.BOX;
        }

        @Override
        public Solid solid() {
            return Box.of(least, greatest, yawDegrees);
        }
    }

    /** An upright cylinder, by the middle of its base. */
    record Post(Vec base, double heightMetres, double radiusMetres) implements FurnitureShape {
        public Post {
            UprightCylinder.of(base, heightMetres, radiusMetres);
        }

        @Override
        public FurnitureKind kind() {
            return FurnitureKind.CYLINDER;
        }

        @Override
        public Solid solid() {
            return UprightCylinder.of(base, heightMetres, radiusMetres);
        }
    }

    /** A branch: everything within a radius of the line between two places. */
    record Branch(Vec from, Vec to, double radiusMetres) implements FurnitureShape {
        public Branch {
            Capsule.of(from, to, radiusMetres);
        }

        @Override
        public FurnitureKind kind() {
            return FurnitureKind.CAPSULE;
        }

        @Override
        public Solid solid() {
            return Capsule.of(from, to, radiusMetres);
        }
    }
}
