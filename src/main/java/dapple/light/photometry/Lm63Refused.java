package dapple.light.photometry;

/** A file cannot be taken. */
final class Lm63Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final int line;
    private final String reason;

    Lm63Refused(int line, String reason) {
        super(reason);
        this.line = line;
        this.reason = reason;
    }

    int line() {
        return line;
    }

    String reason() {
        return reason;
    }
}
