package dapple.light.design;

import dapple.light.survey.Crew;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;

/**
 * Looks at every mix of a size. Since light only adds up, a mix that passes a limit is not made larger; and one to which
 * the brightest of the candidates left cannot add enough is given up. A search that would cost too much is given up as a
 * whole, after a count of mixes and not of time, so that it always finds the same.
 */
final class TreeSearch {
    /** So many times more are begun, in the hope that limits cut most of them. */
    private static final double HOPE = 20;

    /** What it costs to find that two lamps cannot hang together, in mixes. */
    private static final double CONFLICT = 0.05;

    private final SearchSpace space;
    private final Effort effort;
    private final boolean isPruned;
    private final List<int[]> usable = new ArrayList<>();
    private final List<double[]> brightest = new ArrayList<>();

    /** @param isPruned whether mixes that cannot meet the demands are left out */
    TreeSearch(SearchSpace space, Effort effort, boolean isPruned) {
        this.space = space;
        this.effort = effort;
        this.isPruned = isPruned;
        for (LightTable table : space.tables()) {
            int[] rows = usable(table);
            usable.add(rows);
            brightest.add(brightest(table, rows));
        }
    }

    /** The most that any candidate gives, cell by cell. */
    private double[] brightest(LightTable table, int[] rows) {
        double[] most = new double[space.cells().count()];
        for (int cell = 0; cell < most.length; cell++) {
            for (int row : rows) {
                most[cell] = Math.max(most[cell], table.own(row, cell));
            }
        }
        return most;
    }

    private int[] usable(LightTable table) {
        Judge judge = space.judge();
        return IntStream.range(0, space.candidates().size())
                .filter(table::isKnown)
                .filter(row -> !isPruned || judge.isBelowLimits(table, new int[] {row}, 1))
                .toArray();
    }

    /** How many mixes of a size there are, wherever their lamps hang. */
    private double count(int size) {
        return usable.stream()
                .mapToDouble(rows -> space.candidates().mixes(rows, size))
                .sum();
    }

    /**
     * Offers the mixes of a size.
     *
     * @return whether all were looked at
     */
    boolean search(int size, Crew crew, Shortlists into) {
        double hope = isPruned && size > 1 ? HOPE : 1;
        if (count(size) > hope * effort.mostMixes()) {
            return false;
        }
        List<Integer> firsts = new ArrayList<>();
        for (int layering = 0; layering < usable.size(); layering++) {
            int ways = size == 0 ? 1 : usable.get(layering).length;
            firsts.addAll(Collections.nCopies(ways, layering));
        }
        AtomicBoolean isWhole = new AtomicBoolean(true);
        List<Hand> hands = Collections.synchronizedList(new ArrayList<>());
        double budget = size * effort.mostMixes() / Math.max(1, firsts.size());
        crew.each(
                firsts.size(),
                () -> {
                    Hand hand = new Hand(size);
                    hands.add(hand);
                    return hand;
                },
                (hand, index) -> {
                    if (!hand.search(firsts.get(index), index - firsts.indexOf(firsts.get(index)), budget)) {
                        isWhole.set(false);
                    }
                });
        hands.forEach(hand -> into.addAll(hand.found));
        return isWhole.get();
    }

    /** One hand of the crew. */
    private final class Hand {
        private final Judge judge = space.judge();
        private final Shortlists found = space.shortlists();
        private final int[] mix = new int[ProposalTask.MOST_LAMPS];
        private final int size;
        private int layering;
        private double left;

        Hand(int size) {
            this.size = size;
        }

        boolean search(int ofLayering, int first, double budget) {
            layering = ofLayering;
            left = budget;
            if (size == 0) {
                left = 1;
                look();
            } else {
                put(0, first);
            }
            return left > 0;
        }

        private void put(int depth, int at) {
            int candidate = usable.get(layering)[at];
            if (!(left > 0) || !space.candidates().fits(mix, depth, candidate)) {
                left -= CONFLICT;
                return;
            }
            mix[depth] = candidate;
            left--;
            if (depth + 1 == size) {
                look();
            } else if (!isPruned || mayBeMet(depth + 1)) {
                for (int next = at + 1; next < usable.get(layering).length; next++) {
                    put(depth + 1, next);
                }
            }
        }

        private boolean mayBeMet(int hung) {
            LightTable table = space.tables().get(layering);
            return judge.isBelowLimits(table, mix, hung)
                    && judge.mayReachLimits(table, mix, hung, brightest.get(layering), size - hung);
        }

        private void look() {
            LightTable table = space.tables().get(layering);
            boolean isMet = judge.isMet(table, mix, size);
            if (isMet || (!isPruned && space.candidates().isWhole(mix, size))) {
                found.offer(judge.score(table, mix, size), layering, mix, size);
            }
        }
    }
}
