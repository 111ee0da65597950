package dapple.desk;

import dapple.light.design.AmountAtHeight;
import dapple.light.design.AmountThroughLayers;
import dapple.light.design.Fulfilment;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What was found for a question about a draft. */
public sealed interface Answered {
    /** It cannot be asked so: a message says why. */
    record Not(String key, List<String> words) implements Answered {
        public Not {
            words = List.copyOf(words);
        }

        /** What the message is filled with. */
        public Object[] arguments() {
            return words.toArray();
        }
    }

    /** Heights of a lamp, lowest first, each with what it does; none where no height gives what is wanted. */
    record Heights(String lamp, int number, Quantity quantity, double wanted, List<Height> all, Optional<Missed> missed)
            implements Answered {
        public Heights {
            all = List.copyOf(all);
        }
    }

    /** One height, and what it does. */
    record Height(AmountAtHeight found, Effect effect) {
        /** To the tenth of a millimetre. */
        public double metres() {
            return metres(found);
        }

        static double metres(AmountAtHeight found) {
            return Math.rint(found.heightMetres() * 1e4) / 1e4;
        }
    }

    /**
     * Why no height gives what is wanted.
     *
     * @param least that was found; empty, as the most: there is nowhere to hang
     * @param leapAtMetres where the light leaps over it
     */
    record Missed(Optional<AmountAtHeight> least, Optional<AmountAtHeight> most, Optional<Double> leapAtMetres) {}

    /** A cover by its number of layers. */
    record Layers(
            String cover,
            int number,
            int now,
            Quantity quantity,
            Band band,
            boolean isMet,
            AmountThroughLayers best,
            List<AmountThroughLayers> all,
            Effect effect)
            implements Answered {
        public Layers {
            all = List.copyOf(all);
        }
    }

    /** Lamps in the place of one, those that meet all first and then by how little they change. */
    record Swaps(String lamp, int number, int compared, List<Swap> all, Optional<Effect> effect) implements Answered {
        public Swaps {
            all = List.copyOf(all);
        }
    }

    /**
     * One of them.
     *
     * @param turned how it hangs: as the old one, or level with its length to the right or to the back
     * @param factor by which amounts change in the mean
     */
    record Swap(
            String pick,
            Turned turned,
            String name,
            boolean isMet,
            List<Fulfilment> unmet,
            Set<Quantity> changed,
            double factor) {
        public Swap {
            unmet = List.copyOf(unmet);
            changed = Set.copyOf(changed);
        }
    }
}
