package dapple.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Where amounts lie along one axis: evenly, or evenly in their logarithms.
 *
 * @param low lowest amount, above 0 for logarithms
 * @param from where it lies
 * @param to where the highest lies
 */
record PlotScale(double low, double high, double from, double to, boolean isLogarithmic) {
    private static final int HIGHEST_POWER = 30;
    private static final List<Integer> ROUND = List.of(1, 2, 5);

    static PlotScale linear(double low, double high, double from, double to) {
        return new PlotScale(low, high, from, to, false);
    }

    /** For amounts from 0 to the round one that is not below the highest. */
    static PlotScale fromNothing(double highest, double from, double to) {
        ValueAxis axis = ValueAxis.upTo(highest, to, from);
        return linear(0, axis.step() * axis.steps(), from, to);
    }

    /** For amounts above 0, from the round one below to the round one above. */
    static PlotScale logarithmic(double low, double high, double from, double to) {
        List<Double> round = roundOnes(low, high);
        return new PlotScale(round.get(0), round.get(round.size() - 1), from, to, true);
    }

    double at(double amount) {
        double share = isLogarithmic
                ? Math.log(Math.max(amount, low) / low) / Math.log(high / low)
                : (amount - low) / (high - low);
        return from + share * (to - from);
    }

    /** Round numbers, at most about so many; of logarithms all of 1, 2 and 5, or the powers of ten where these are many. */
    List<PlotFrame.Mark> marks(int most) {
        List<Double> amounts = isLogarithmic ? roundOnes(low, high) : evenOnes(most);
        boolean onlyPowers = isLogarithmic && amounts.size() > most;
        return amounts.stream()
                .filter(amount -> !onlyPowers || isPower(amount))
                .map(amount -> new PlotFrame.Mark(Rounded.of(at(amount)), written(amount)))
                .toList();
    }

    private static boolean isPower(double amount) {
        double power = Math.log10(amount);
        return Math.abs(power - Math.rint(power)) < 1e-9;
    }

    private List<Double> evenOnes(int most) {
        double step = step(most);
        List<Double> amounts = new ArrayList<>();
        for (double index = Math.ceil(low / step - 1e-9); index * step <= high * (1 + 1e-9); index++) {
            amounts.add(index * step);
        }
        return amounts;
    }

    /** The smallest of 1, 2 and 5 times a power of ten that gives at most so many steps. */
    private double step(int most) {
        double least = (high - low) / most;
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        return ROUND.stream()
                .mapToDouble(digit -> digit * power)
                .filter(step -> step >= least * (1 - 1e-9))
                .findFirst()
                .orElse(10 * power);
    }

    /** All of 1, 2 and 5 times a power of ten from the last not above one to the first not below the other. */
    private static List<Double> roundOnes(double low, double high) {
        List<Double> amounts = new ArrayList<>();
        for (int power = (int) Math.floor(Math.log10(low)) - 1; power <= HIGHEST_POWER; power++) {
            for (int digit : ROUND) {
                double amount =
                        BigDecimal.valueOf(digit).scaleByPowerOfTen(power).doubleValue();
                if (amount <= low) {
                    amounts.clear();
                }
                amounts.add(amount);
                if (amount >= high && amounts.size() > 1) {
                    return amounts;
                }
            }
        }
        return amounts;
    }

    private static String written(double amount) {
        if (amount >= 1000) {
            return String.format(Locale.ROOT, "%,.0f", amount);
        }
        return BigDecimal.valueOf(Math.rint(amount * 1e9) / 1e9)
                .stripTrailingZeros()
                .toPlainString();
    }
}
