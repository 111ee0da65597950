package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.source.Beam;
import org.jspecify.annotations.Nullable;

/**
 * The beam that all elements of a chord of a face have.
 *
 * @param height of the place over the face, m
 * @param power the same beam as a power of the cosine, if it is one
 */
record ChordBeam(
        Beam beam, Vec aim, double height, @Nullable FacePower power) {}
