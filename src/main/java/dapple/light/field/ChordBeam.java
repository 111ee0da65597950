package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.source.Beam;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The beam that all elements of a chord of a face have.
 *
 * @param height of the place over the face, m
 * @param edgeTangents of the angles at which the beam ends or turns sharply
 * @param narrowness about the inverse of the half-width of the light as an angle from the foot of the perpendicular
 * @param power the same beam as a power of the cosine, if it is one
 */
record ChordBeam(
        Beam beam,
        Vec aim,
        double height,
        List<Double> edgeTangents,
        double narrowness,
        @Nullable FacePower power) {}
