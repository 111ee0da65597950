package dapple.light.design;

import dapple.light.design.Choices.Choice;
import dapple.light.survey.Crew;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Where mixes are too many to be looked at one by one: goes through the choices of lamps and looks for places for each. From
 * several starts drawn by a seed, one lamp after the other moves to where it is best, until none gets better.
 */
final class PlacingSearch {
    private static final int MOST_ROUNDS = 12;

    /** A start is drawn anew so often where lamps cannot hang together. */
    private static final int MOST_DRAWS = 20;

    /** What is missing outweighs every merit. */
    private static final double UNMET = 1e12;

    private final SearchSpace space;
    private final List<Choice> choices;
    private final int descents;
    private final List<Merit> merits;

    private PlacingSearch(SearchSpace space, Effort effort, List<Choice> choices) {
        this.space = space;
        this.choices = choices;
        this.descents = effort.descentsEach(choices.size());
        this.merits = space.task().way().isPresent()
                ? List.of(Merit.WELL_INSIDE, Merit.BEST_GRADIENT)
                : List.of(Merit.WELL_INSIDE);
    }

    /** Looks at the choices that may meet the demands. */
    static PlacingSearch hopeful(SearchSpace space, Effort effort, int leastSize) {
        List<Choice> choices = Choices.of(space, leastSize).stream()
                .filter(choice -> Choices.isHopeful(space, choice))
                .toList();
        return new PlacingSearch(space, effort, choices);
    }

    /** Looks at those that cannot, and at those that were left to be looked at one by one, for what comes nearest. */
    static PlacingSearch others(SearchSpace space, Effort effort, int leastSize, int hopefulSize) {
        List<Choice> choices = Choices.of(space, leastSize).stream()
                .filter(choice -> choice.groups().size() < hopefulSize || !Choices.isHopeful(space, choice))
                .toList();
        return new PlacingSearch(space, effort.least(), choices);
    }

    void search(Crew crew, Shortlists into) {
        List<Descent> hands = Collections.synchronizedList(new ArrayList<>());
        crew.each(
                choices.size(),
                () -> {
                    Descent hand = new Descent();
                    hands.add(hand);
                    return hand;
                },
                Descent::search);
        hands.forEach(hand -> into.addAll(hand.found));
    }

    /** One hand of the crew. */
    private final class Descent {
        private final Judge judge = space.judge();
        private final Shortlists found = space.shortlists();
        private final int[] mix = new int[ProposalTask.MOST_LAMPS];
        private final int[] others = new int[ProposalTask.MOST_LAMPS];
        private Choice choice = new Choice(0, List.of());
        private Merit merit = Merit.WELL_INSIDE;
        private double best;

        void search(int index) {
            choice = choices.get(index);
            Random random = new Random(index);
            for (int start = 0; start < descents; start++) {
                merit = merits.get(start % merits.size());
                if (drawn(random)) {
                    descend();
                }
            }
        }

        private int size() {
            return choice.groups().size();
        }

        private boolean drawn(Random random) {
            for (int draw = 0; draw < MOST_DRAWS; draw++) {
                int placed = 0;
                while (placed < size() && isPlaced(placed, random)) {
                    placed++;
                }
                if (placed == size()) {
                    return true;
                }
            }
            return false;
        }

        private boolean isPlaced(int slot, Random random) {
            List<Integer> group = choice.groups().get(slot);
            mix[slot] = group.get(random.nextInt(group.size()));
            return space.candidates().fits(mix, slot, mix[slot]);
        }

        private void descend() {
            best = key();
            int since = 0;
            for (int turn = 0; turn < MOST_ROUNDS * size() && since < size(); turn++) {
                since = place(turn % size()) ? 0 : since + 1;
            }
        }

        /** Moves one lamp to its best place; whether that is better. */
        private boolean place(int slot) {
            int before = mix[slot];
            int bestRow = before;
            System.arraycopy(mix, 0, others, 0, slot);
            System.arraycopy(mix, slot + 1, others, slot, size() - slot - 1);
            List<Integer> group = choice.groups().get(slot);
            for (int index = 0; index < group.size(); index++) {
                int row = group.get(index);
                if (row != before && space.candidates().fits(others, size() - 1, row)) {
                    mix[slot] = row;
                    double key = key();
                    if (key < best) {
                        best = key;
                        bestRow = row;
                    }
                }
            }
            mix[slot] = bestRow;
            return bestRow != before;
        }

        private double key() {
            Score score = judge.score(space.tables().get(choice.layering()), mix, size());
            found.offer(score, choice.layering(), mix, size());
            return score.isMet() ? merit.key(score) : UNMET * (1 + score.violation());
        }
    }
}
