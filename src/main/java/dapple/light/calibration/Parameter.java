package dapple.light.calibration;

import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Source;
import java.util.Set;

/** What a fit may find out about a lamp. */
public sealed interface Parameter {
    /** What to read when readings leave this open, as a noun phrase. */
    String wanted();

    /**
     * How much of a quantity the lamp gives: the amount of its {@code Output.Emission}, in that record's units.
     */
    record Emission(Quantity quantity) implements Parameter {
        @Override
        public String wanted() {
            return "a reading of this quantity on the axis, in the light of the lamp";
        }
    }

    /** The shape of the light. Of two that readings cannot tell apart, the first is said to be open. */
    enum Shape implements Parameter {
        /** How far behind the face a beam seems to come from, along the axis, m; negative in front of it. */
        OFFSET(
                "a reading on the axis at another distance: half as far as the nearest, or twice as far as the farthest"),
        /** n of a beam cos^n θ. */
        EXPONENT("a reading off the axis, where about half of the intensity on it is left"),
        /** The share of a tube's reflector that leaves all round. */
        SPILL("a reading behind the reflector, more than 90° around the tube from its aim"),
        /** m of a tube's reflector, spill + (1 − spill) · cos^m φ. */
        LOBE("a reading across the tube, about 45° around it from its aim");

        private final String wanted;

        Shape(String wanted) {
            this.wanted = wanted;
        }

        @Override
        public String wanted() {
            return wanted;
        }

        /** The parameters that a source has. */
        public static Set<Shape> of(Source source) {
            if (source instanceof Source.Spot spot) {
                return spot.beam() instanceof Beam.Power ? Set.of(OFFSET, EXPONENT) : Set.of(OFFSET);
            }
            if (source instanceof Source.Face face && face.beam() instanceof Beam.Power) {
                return Set.of(EXPONENT);
            }
            boolean reflects =
                    source instanceof Source.Line line && line.reflector().isPresent();
            return reflects ? Set.of(LOBE, SPILL) : Set.of();
        }
    }
}
