package dapple.light.metrology;

import dapple.light.judging.MeterUncertainty;
import dapple.light.metrology.Contribution.Basis;
import dapple.light.quantity.Check;
import dapple.light.uncertainty.StandardUncertainty;
import dapple.light.uncertainty.UncertainAmount;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Uncertainty of a reading y by its independent contributions: u_c² = Σ (c u)² + r²/12, r the step of the display;
 * U = k · u_c [jcgm100, eq. 10 and 12, F.2.2.1].
 *
 * @param resolution r, above 0, in the unit of the reading
 */
public record UncertaintyBudget(List<Contribution> contributions, double resolution) {
    /** For which part of all readings U is meant to hold. */
    private static final double PROBABILITY = 0.95;

    /** Beyond so many the factor is 2 whatever their number. */
    private static final double MOST_DEGREES = 1e6;

    public UncertaintyBudget {
        contributions = List.copyOf(contributions);
        Check.within("resolution", resolution, Double.MIN_NORMAL, Double.MAX_VALUE, "");
    }

    /** u_c of a reading, in its unit. */
    public double combined(double amount) {
        return Math.hypot(root(part -> true, amount), display());
    }

    /** The part that all readings by this meter have in common, in the unit of the reading. */
    public double shared(double amount) {
        return root(UncertaintyBudget::isShared, amount);
    }

    /** The part that is each reading's own, in the unit of the reading. */
    public double own(double amount) {
        return Math.hypot(root(part -> !isShared(part), amount), display());
    }

    /** Of the logarithm of a reading, without what cancels against another one by the same meter. */
    public double ownInLogarithm(double amount) {
        Check.within("amount", amount, Double.MIN_NORMAL, Double.MAX_VALUE, "");
        return own(amount) / amount;
    }

    /**
     * ν of u_c by Welch and Satterthwaite: u_c⁴/Σ (c u)⁴/ν [jcgm100, G.4.1].
     *
     * @return above 0, infinite where every contribution is taken as sure
     */
    public double degreesOfFreedom(double amount) {
        return effective(contributions, amount, combined(amount));
    }

    /** k of a reading: Student's factor for 95 % and the whole part of ν [jcgm100, G.4.2], and at least 2. */
    public double coverageFactor(double amount) {
        return atLeastTwo(degreesOfFreedom(amount));
    }

    /** U = k · u_c, in the unit of the reading. */
    public double expanded(double amount) {
        return coverageFactor(amount) * combined(amount);
    }

    /** The amount with u = U/2, so that its interval is y ± U. */
    public UncertainAmount around(double amount) {
        return new UncertainAmount(amount, expanded(amount) / UncertainAmount.COVERAGE_FACTOR);
    }

    /** What judging takes: shares and amounts apart, each expanded by its own factor, and the display's step. */
    public MeterUncertainty forJudging() {
        double share = Math.min(Math.nextDown(1.0), expandedOf(Basis.SHARE));
        return new MeterUncertainty(share, expandedOf(Basis.AMOUNT), resolution);
    }

    /** The part that is each reading's own, as shares and amounts, the display's step among these. */
    public StandardUncertainty ownPart() {
        return new StandardUncertainty(
                root(part -> !isShared(part) && part.basis() == Basis.SHARE, 1),
                Math.hypot(root(part -> !isShared(part) && part.basis() == Basis.AMOUNT, 1), display()));
    }

    private double expandedOf(Basis basis) {
        double root = root(part -> part.basis() == basis, 1);
        List<Contribution> parts =
                contributions.stream().filter(part -> part.basis() == basis).toList();
        return atLeastTwo(effective(parts, 1, root)) * root;
    }

    private double root(Predicate<Contribution> which, double amount) {
        return Math.sqrt(contributions.stream()
                .filter(which)
                .mapToDouble(part -> square(part.at(amount)))
                .sum());
    }

    private double display() {
        return resolution / Math.sqrt(12);
    }

    private static boolean isShared(Contribution part) {
        return part.cause().isShared();
    }

    private static double effective(List<Contribution> parts, double amount, double combined) {
        DoubleStream shares = parts.stream()
                .mapToDouble(part ->
                        square(square(part.at(amount))) / part.evaluation().degreesOfFreedom());
        double sum = shares.sum();
        return sum == 0 ? Evaluation.MANY : square(square(combined)) / sum;
    }

    private static double atLeastTwo(double degreesOfFreedom) {
        return Math.max(UncertainAmount.COVERAGE_FACTOR, studentFactor(degreesOfFreedom, PROBABILITY));
    }

    /**
     * The factor t that holds a share of Student's distribution within ±t, by the whole part of ν [jcgm100, table G.2].
     *
     * @param degreesOfFreedom ν, above 0, taken as 1 where it is below
     */
    static double studentFactor(double degreesOfFreedom, double probability) {
        double whole = Math.max(1, Math.floor(Math.min(degreesOfFreedom, MOST_DEGREES)));
        return new TDistribution(whole).inverseCumulativeProbability((1 + probability) / 2);
    }

    private static double square(double number) {
        return number * number;
    }
}
