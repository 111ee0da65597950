package dapple.order;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.quantity.Check;
import java.util.Optional;

/** What a vet has ordered; every limit is a UV index, dimensionless. */
public sealed interface Ordered {
    /** What readings at the animal are judged by, where its species' limits are these or none. */
    Limits limits(Optional<Limits> ofSpecies);

    OrderKind kind();

    /** Limits of its own instead of the species'. */
    record OwnLimits(Limits limits) implements Ordered {
        @Override
        public Limits limits(Optional<Limits> ofSpecies) {
            return limits;
        }

        @Override
        public OrderKind kind() {
            return OrderKind.OWN_LIMITS;
        }
    }

    /** Ultraviolet off: every reachable point has at most 0.1. */
    record UvOff() implements Ordered {
        /** What a meter with steps of 0.1 still shows in the dark. */
        public static final double MOST = 0.1;

        /** A reading at a ceiling is over it already, and 0.1 is allowed. */
        private static final Limits LIMITS = new Limits(Band.atMost(MOST), MOST, Math.nextUp(MOST));

        @Override
        public Limits limits(Optional<Limits> ofSpecies) {
            return LIMITS;
        }

        @Override
        public OrderKind kind() {
            return OrderKind.UV_OFF;
        }
    }

    /**
     * A lower ceiling. A basking range that lies wholly above it has no lower end any more.
     *
     * @param ceiling above 0
     */
    record Cap(double ceiling) implements Ordered {
        public Cap {
            Check.within("ceiling", ceiling, Double.MIN_NORMAL, Double.MAX_VALUE, "");
        }

        @Override
        public Limits limits(Optional<Limits> ofSpecies) {
            return ofSpecies.map(this::lowered).orElseGet(() -> new Limits(Band.atMost(ceiling), ceiling, ceiling));
        }

        private Limits lowered(Limits limits) {
            Band basking = limits.basking();
            double low = basking.low() < ceiling ? basking.low() : 0;
            return new Limits(
                    new Band(low, Math.min(basking.high(), ceiling)),
                    Math.min(limits.shadeHigh(), ceiling),
                    Math.min(limits.ceiling(), ceiling));
        }

        @Override
        public OrderKind kind() {
            return OrderKind.CAP;
        }
    }
}
