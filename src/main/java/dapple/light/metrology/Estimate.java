package dapple.light.metrology;

import java.util.Comparator;
import java.util.List;

/**
 * How large a change of one shape is.
 *
 * @param size ln, or ln per year
 * @param standardError in the same unit; infinite where the readings say nothing
 * @param z how many standard errors it stands out by, where it may have begun in one week only
 */
record Estimate(Shape shape, double size, double standardError, double z) {
    static Estimate of(Shape shape, double size, double standardError) {
        return new Estimate(shape, size, standardError, Math.abs(size) / standardError);
    }

    private boolean isDetermined() {
        return Double.isFinite(standardError);
    }

    double square() {
        return z * z;
    }

    /**
     * A step whose week is not known: shape and z of the likeliest, size and standard error over all weeks, each counted
     * by its likelihood exp(z²/2).
     *
     * @param steps at least 1
     */
    static Estimate ofLikeliest(List<Estimate> steps) {
        Estimate best =
                steps.stream().max(Comparator.comparingDouble(Estimate::z)).orElseThrow();
        double weights = 0;
        double sum = 0;
        double squares = 0;
        for (Estimate step : steps.stream().filter(Estimate::isDetermined).toList()) {
            double weight = Math.exp((step.square() - best.square()) / 2);
            weights += weight;
            sum += weight * step.size;
            squares += weight * (step.size * step.size + step.standardError * step.standardError);
        }
        if (weights == 0) {
            return best;
        }
        double mean = sum / weights;
        return new Estimate(best.shape, mean, Math.sqrt(squares / weights - mean * mean), best.z);
    }
}
