package dapple.light.spectrum;

/** A spectrum that cannot be one, with the place of the number at fault. */
public final class SpectrumRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final String pointer;
    private final String reason;

    SpectrumRefused(String pointer, String reason) {
        super(pointer + ": " + reason);
        this.pointer = pointer;
        this.reason = reason;
    }

    /** Where the number stands, as a JSON Pointer into the spectrum's document, such as {@code /samples/3/0}. */
    public String pointer() {
        return pointer;
    }

    /** What is allowed there and what was found, a whole sentence. */
    public String reason() {
        return reason;
    }
}
