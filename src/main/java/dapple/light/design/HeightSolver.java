package dapple.light.design;

import dapple.light.quantity.Check;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;

/**
 * The heights at which a lamp gives a receiver what is wanted. The light is sampled from low to high; where it passes what
 * is wanted between two samples the height is found by Brent's method, and where it turns back before, the turn is
 * looked at first. So the light need not rise or fall all the way. What turns twice within one step may be missed.
 */
public final class HeightSolver {
    /** Accuracy of the field while solving, finer than for maps. */
    private static final double ACCURACY = 1e-4;

    /** A height is an answer if what it gives is so near to what is wanted: else the light leaps there. */
    private static final double NEAR = 5e-4;

    private static final double STEP_METRES = 0.01;
    private static final int LEAST_STEPS = 24;
    private static final int MOST_STEPS = 300;
    private static final double CLOSE_METRES = 1e-8;
    private static final int MOST_EVALUATIONS = 200;
    private static final int HALVINGS = 30;

    private final HeightTask task;
    private final double wanted;
    private final List<AmountAtHeight> found = new ArrayList<>();
    private final List<Double> leaps = new ArrayList<>();
    private final List<AmountAtHeight> seen = new ArrayList<>();

    private HeightSolver(HeightTask task, double wanted) {
        this.task = task.with(Math.min(ACCURACY, task.scene().accuracy()));
        this.wanted = Check.within("wanted amount", wanted, Double.MIN_NORMAL, 1e12, "");
    }

    /**
     * All heights at which the amount is as wanted.
     *
     * @param wanted above 0, in the unit of the quantity
     */
    public static HeightAnswer solve(HeightTask task, double wanted) {
        return new HeightSolver(task, wanted).answer();
    }

    private HeightAnswer answer() {
        for (List<AmountAtHeight> stretch : stretches()) {
            cross(stretch);
        }
        if (seen.isEmpty()) {
            return new HeightAnswer.NowhereToHang();
        }
        if (!found.isEmpty()) {
            found.sort(Comparator.comparingDouble(AmountAtHeight::heightMetres));
            return new HeightAnswer.Met(found.stream().distinct().toList());
        }
        Comparator<AmountAtHeight> byAmount = Comparator.comparingDouble(AmountAtHeight::amount);
        Optional<Double> leap = leaps.stream().findFirst();
        return new HeightAnswer.OutOfReach(
                seen.stream().min(byAmount).get(), seen.stream().max(byAmount).get(), leap);
    }

    /** The samples, parted where the lamp cannot hang; each part goes as far as it can. */
    private List<List<AmountAtHeight>> stretches() {
        double low = task.heightsMetres().low();
        double width = task.heightsMetres().high() - low;
        int steps = (int) Math.max(LEAST_STEPS, Math.min(MOST_STEPS, Math.ceil(width / STEP_METRES)));
        List<List<AmountAtHeight>> stretches = new ArrayList<>();
        boolean wasFree = false;
        double last = low;
        for (int step = 0; step <= (width > 0 ? steps : 0); step++) {
            double height = low + width * step / steps;
            boolean isFree = task.isFree(height);
            if (isFree && !wasFree) {
                stretches.add(new ArrayList<>());
            }
            if (step > 0 && isFree != wasFree) {
                stretches.get(stretches.size() - 1).add(sample(edge(isFree ? height : last, isFree ? last : height)));
            }
            if (isFree) {
                stretches.get(stretches.size() - 1).add(sample(height));
            }
            wasFree = isFree;
            last = height;
        }
        return stretches;
    }

    /** The last free height on the way from a free one to one that is not. */
    private double edge(double free, double blocked) {
        double good = free;
        double bad = blocked;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (good + bad) / 2;
            if (task.isFree(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }

    private AmountAtHeight sample(double height) {
        AmountAtHeight sample = new AmountAtHeight(height, task.amount(height));
        seen.add(sample);
        return sample;
    }

    private void cross(List<AmountAtHeight> samples) {
        for (int index = 0; index < samples.size(); index++) {
            AmountAtHeight here = samples.get(index);
            if (over(here) == 0) {
                found.add(here);
            }
            if (index > 0) {
                cross(samples.get(index - 1), here);
            }
            if (index > 0 && index < samples.size() - 1) {
                turn(samples.get(index - 1), here, samples.get(index + 1));
            }
        }
    }

    private double over(AmountAtHeight sample) {
        return sample.amount() - wanted;
    }

    private void cross(AmountAtHeight one, AmountAtHeight other) {
        if (over(one) * over(other) < 0) {
            UnivariateFunction over = height -> task.amount(height) - wanted;
            double height = new BrentSolver(CLOSE_METRES)
                    .solve(MOST_EVALUATIONS, over, one.heightMetres(), other.heightMetres());
            keep(sample(height));
        }
    }

    private void keep(AmountAtHeight solved) {
        if (Math.abs(over(solved)) <= NEAR * wanted) {
            found.add(solved);
        } else {
            leaps.add(solved.heightMetres());
        }
    }

    /** Three samples on one side of what is wanted, the middle one nearest to it: perhaps the other side lies between. */
    private void turn(AmountAtHeight before, AmountAtHeight here, AmountAtHeight after) {
        boolean isOneSided = over(here) * over(before) > 0 && over(here) * over(after) > 0;
        double away = Math.abs(over(here));
        if (!isOneSided || away > Math.abs(over(before)) || away > Math.abs(over(after))) {
            return;
        }
        AmountAtHeight top = extreme(before, here, after);
        if (over(top) * over(here) < 0) {
            cross(before, top);
            cross(top, after);
        } else if (Math.abs(over(top)) <= NEAR * wanted) {
            found.add(top);
        }
    }

    private AmountAtHeight extreme(AmountAtHeight before, AmountAtHeight here, AmountAtHeight after) {
        UnivariatePointValuePair best = new BrentOptimizer(1e-6, 1e-6)
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        new UnivariateObjectiveFunction(task::amount),
                        over(here) < 0 ? GoalType.MAXIMIZE : GoalType.MINIMIZE,
                        new SearchInterval(before.heightMetres(), after.heightMetres(), here.heightMetres()));
        AmountAtHeight top = new AmountAtHeight(best.getPoint(), best.getValue());
        seen.add(top);
        return top;
    }
}
