package dapple.drawing;

import dapple.light.zone.ZoneTarget;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** At which amounts a map changes its tone, and where it has lines with which words. */
public sealed interface Levels {
    /**
     * At the limits of a target.
     *
     * @param words what stands at the line of each limit
     */
    record OfTarget(ZoneTarget target, Map<FieldMap.Limit, String> words) implements Levels {
        public OfTarget {
            words = Map.copyOf(words);
        }
    }

    /**
     * At round amounts: 1, 2 and 5 times powers of ten, up to the largest that a fiftieth of the plane reaches.
     *
     * @param rounds from the least
     * @param ceiling that no place may reach; empty where none is asked for
     */
    record Round(List<At> rounds, Optional<At> ceiling) implements Levels {
        /** Two tones a level, and one below and above. */
        static final int MOST = 7;

        public Round {
            rounds = List.copyOf(rounds);
            if (rounds.size() > MOST) {
                throw new IllegalArgumentException("at most " + MOST + " levels, were " + rounds.size());
            }
        }

        /** The levels that suit what falls on a plane; none where it is dark. */
        public static Round on(LitPlane plane, Optional<Double> ceiling, DoubleFunction<String> words) {
            List<At> rounds = new ArrayList<>();
            double level = plane.reachedBy(SHARE);
            for (int index = 0; index < MOST && level > 0; index++) {
                level = Ticks.roundBelow(index == 0 ? level : level * JUST_BELOW);
                rounds.add(new At(level, words.apply(level)));
            }
            Collections.reverse(rounds);
            return new Round(rounds, ceiling.map(most -> new At(most, words.apply(most))));
        }

        private static final double SHARE = 0.02;
        private static final double JUST_BELOW = 0.99;
    }

    /** An amount and what stands at its line. */
    record At(double amount, String words) {}
}
