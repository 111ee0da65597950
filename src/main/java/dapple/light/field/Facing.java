package dapple.light.field;

import dapple.light.geometry.Vec;

/** How light is looked at in a place. */
public sealed interface Facing {
    /** On a plane facing a direction; light from behind counts nothing. */
    record Direction(Vec normal) implements Facing {
        public Direction {
            normal = normal.unit();
        }
    }

    /** On a plane facing the middle of a lamp. */
    record TowardsLamp(String id) implements Facing {}

    /** On the plane that has most, for each quantity by itself. */
    record Maximum() implements Facing {}

    /** From all round, without a cosine. */
    record AllRound() implements Facing {}
}
