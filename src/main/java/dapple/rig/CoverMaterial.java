package dapple.rig;

import dapple.light.quantity.Check;
import dapple.light.quantity.Quantity;
import java.util.Map;

/** What a cover is made of, as far as light is concerned. */
public sealed interface CoverMaterial {
    /** Whether it is a mesh, which comes in layers. */
    boolean isMesh();

    default boolean isWeave() {
        return this instanceof Weave;
    }

    /**
     * A square weave of round wires: it says how much of everything passes, at every angle.
     *
     * @param wireMetres diameter of the wires, m
     * @param pitchMetres distance of the middles of neighbouring wires, m
     */
    record Weave(double wireMetres, double pitchMetres, Provenance provenance) implements CoverMaterial {
        public Weave {
            Check.within("pitch", pitchMetres, 1e-6, 1, "m");
            Check.within("wire", wireMetres, 1e-6, Math.nextDown(pitchMetres), "m");
        }

        @Override
        public boolean isMesh() {
            return true;
        }
    }

    /** A sheet, or a mesh whose weave is not known: what passes of some quantities. Of others it is not known. */
    record Passing(boolean isMesh, Map<Quantity, CoverTransmittance> byQuantity) implements CoverMaterial {
        public Passing {
            byQuantity = Map.copyOf(byQuantity);
        }
    }
}
