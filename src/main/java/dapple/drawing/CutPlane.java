package dapple.drawing;

import dapple.light.geometry.Vec;

/** The plane through an enclosure that a drawing shows. */
public sealed interface CutPlane permits Section, Plan {
    /** Where a place lies on the paper. */
    Place on(Vec place);

    /** The place in the enclosure. */
    Vec in(Place place);

    /** How far a place lies off the plane, with its sign, m. */
    double off(Vec place);
}
