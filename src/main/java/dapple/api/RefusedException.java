package dapple.api;

/** Ends a request with a problem; the first one found. */
final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Problem problem;

    RefusedException(Problem problem) {
        super(problem.detail());
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}
