package dapple.light.design;

import dapple.light.survey.Crew;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Looks for mixes that are too many to be looked at one by one: from many starts, each time by the best single step (a lamp
 * more, less or another in its stead, other covers) as long as that is better. Starts come from what was found before and
 * from seeds, so that it always finds the same.
 */
final class WanderSearch {
    private static final int MOST_STEPS = 30;

    /** Candidates that are tried for one step; of more, some drawn from the seed. */
    private static final int MOST_TRIED = 600;

    /** A start is filled up by so many draws. */
    private static final int MOST_DRAWS = 20;

    /** What is missing outweighs every merit. */
    private static final double UNMET = 1e12;

    private final SearchSpace space;
    private final Effort effort;
    private final List<Mix> known;
    private final List<Integer> usable;

    WanderSearch(SearchSpace space, Effort effort, Shortlists found) {
        this.space = space;
        this.effort = effort;
        List<Mix> starts = new ArrayList<>(found.best());
        starts.addAll(found.nearest());
        this.known = starts;
        this.usable = IntStream.range(0, space.candidates().size())
                .filter(row -> space.tables().stream().allMatch(table -> table.isKnown(row)))
                .boxed()
                .toList();
    }

    void search(Crew crew, Shortlists into) {
        List<Walk> hands = Collections.synchronizedList(new ArrayList<>());
        crew.each(
                effort.starts(),
                () -> {
                    Walk hand = new Walk();
                    hands.add(hand);
                    return hand;
                },
                Walk::from);
        hands.forEach(hand -> into.addAll(hand.found));
    }

    /** One hand of the crew. */
    private final class Walk {
        private final Judge judge = space.judge();
        private final Shortlists found = space.shortlists();
        private final int[] mix = new int[ProposalTask.MOST_LAMPS];
        private final int[] tried = new int[ProposalTask.MOST_LAMPS];
        private Random random = new Random(0);
        private Merit merit = Merit.WELL_INSIDE;
        private int layering;
        private int size;
        private double best;
        private Mix next = Mix.of(0, mix, 0);

        void from(int index) {
            random = new Random(index);
            merit = Merit.values()[index % Merit.values().length];
            start(index);
            for (int step = 0; step < MOST_STEPS && step(); step++) {
                take(next);
            }
        }

        private void start(int index) {
            if (index % 2 == 1 && !known.isEmpty()) {
                take(known.get(random.nextInt(known.size())));
            } else {
                takeAny();
            }
            best = Double.POSITIVE_INFINITY;
        }

        private void take(Mix start) {
            layering = start.layering();
            size = start.size();
            System.arraycopy(start.lamps(), 0, mix, 0, size);
        }

        private void takeAny() {
            layering = random.nextInt(space.tables().size());
            size = 0;
            space.candidates().required().forEach(this::addAnyOf);
            for (int draw = 0; draw < MOST_DRAWS && size < space.candidates().most(); draw++) {
                addAnyOf(usable);
            }
        }

        private void addAnyOf(List<Integer> some) {
            int candidate = some.isEmpty() ? -1 : some.get(random.nextInt(some.size()));
            if (candidate >= 0 && space.candidates().fits(mix, size, candidate)) {
                mix[size++] = candidate;
            }
        }

        /** Looks at all single steps; whether one of them is better. */
        private boolean step() {
            double before = best;
            for (int other = 0; other < space.tables().size(); other++) {
                look(other, mix, size);
            }
            for (int slot = 0; slot < size; slot++) {
                without(slot);
                look(layering, tried, size - 1);
            }
            int count = Math.min(MOST_TRIED, usable.size());
            for (int index = 0; index < count; index++) {
                exchange(usable.size() <= MOST_TRIED ? index : random.nextInt(usable.size()));
            }
            return best < before;
        }

        private void exchange(int at) {
            int candidate = usable.get(at);
            if (size < space.candidates().most() && space.candidates().fits(mix, size, candidate)) {
                System.arraycopy(mix, 0, tried, 0, size);
                tried[size] = candidate;
                look(layering, tried, size + 1);
            }
            for (int slot = 0; slot < size; slot++) {
                without(slot);
                if (space.candidates().fits(tried, size - 1, candidate)) {
                    tried[size - 1] = candidate;
                    look(layering, tried, size);
                }
            }
        }

        private void without(int slot) {
            System.arraycopy(mix, 0, tried, 0, slot);
            System.arraycopy(mix, slot + 1, tried, slot, size - slot - 1);
        }

        private void look(int ofLayering, int[] lamps, int count) {
            if (!space.candidates().isWhole(lamps, count)) {
                return;
            }
            Score score = space.score(judge, ofLayering, lamps, count);
            found.offer(score, ofLayering, lamps, count);
            double key = score.isMet() ? meritKey(score) : UNMET * (1 + score.violation());
            if (key < best) {
                best = key;
                next = Mix.of(ofLayering, lamps, count);
            }
        }

        private double meritKey(Score score) {
            double key = merit.key(score);
            return key < UNMET ? key : Merit.WELL_INSIDE.key(score);
        }
    }
}
