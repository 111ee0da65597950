package dapple.light.metrology;

/**
 * How large a change of one shape is.
 *
 * @param size ln, or ln per year
 * @param standardError in the same unit; infinite where the readings say nothing
 */
record Estimate(Shape shape, double size, double standardError) {
    /** z: how many standard errors it stands out by. */
    double z() {
        return Math.abs(size) / standardError;
    }

    double square() {
        return z() * z();
    }
}
