package dapple.light.design;

import java.util.List;

/** Judges mixes by the tables. Not for two threads at once. */
final class Judge {
    private final List<Demand> demands;
    private final Cells cells;
    private final Candidates candidates;
    private final Frame frame;
    private final double[] amounts;
    private final double[] lows;
    private final double[] highs;

    Judge(ProposalTask task, Cells cells, Candidates candidates) {
        this.demands = task.demands();
        this.frame = task.frame();
        this.cells = cells;
        this.candidates = candidates;
        this.amounts = new double[cells.count()];
        this.lows = new double[cells.wayStart()];
        this.highs = new double[cells.wayStart()];
        for (int cell = 0; cell < lows.length; cell++) {
            Demand demand = demands.get(cells.get(cell).demand());
            lows[cell] = demand.band().low();
            highs[cell] = demand.mostAllowed();
        }
    }

    /** Whether light that can only grow has passed no high limit yet. */
    boolean isBelowLimits(LightTable table, int[] mix, int size) {
        for (int cell = 0; cell < highs.length; cell++) {
            if (table.amount(mix, size, cell) > highs[cell]) {
                return false;
            }
        }
        return true;
    }

    /** Whether so many more lamps as bright as the brightest could bring every cell to its low limit. */
    boolean mayReachLimits(LightTable table, int[] mix, int size, double[] brightest, int more) {
        for (int cell = 0; cell < lows.length; cell++) {
            double low = lows[cell];
            if (low > 0 && table.most(mix, size, cell) + more * brightest[cell] < low) {
                return false;
            }
        }
        return true;
    }

    /** Whether every demand is met, as far as the table knows. */
    boolean isMet(LightTable table, int[] mix, int size) {
        for (int cell = 0; cell < lows.length; cell++) {
            double amount = table.amount(mix, size, cell);
            if (!(amount >= lows[cell] && amount <= highs[cell])) {
                return false;
            }
        }
        return candidates.isWhole(mix, size);
    }

    Score score(LightTable table, int[] mix, int size) {
        for (int cell = 0; cell < amounts.length; cell++) {
            amounts[cell] = table.amount(mix, size, cell);
        }
        int changes = candidates.changes(mix, size) + frame.changes(table.layering());
        return score(amounts, changes, candidates.watts(mix, size));
    }

    /** The score of amounts in all cells, from the tables or from the engine itself. */
    Score score(double[] found, int changes, double watts) {
        int unmet = 0;
        int last = -1;
        double violation = 0;
        double loss = 0;
        int cell = 0;
        for (int index = 0; index < demands.size(); index++) {
            Demand demand = demands.get(index);
            int end = cell + demand.receivers().size();
            double worst = 0;
            double missing = 0;
            for (; cell < end; cell++) {
                worst = Math.max(worst, demand.loss(found[cell]));
                if (!demand.isMetBy(found[cell])) {
                    missing = Math.max(missing, Score.violation(demand.missingFactor(found[cell])));
                }
            }
            loss += worst;
            violation += missing;
            if (missing > 0) {
                unmet++;
                last = index;
            }
        }
        return new Score(unmet, unmet == 1 ? last : -1, violation, loss, changes, watts, unevenness(found, cell));
    }

    private static double unevenness(double[] found, int from) {
        return from < found.length ? Way.unevenness(found, from, found.length - from) : Double.NaN;
    }
}
