package dapple.light.spectrum;

/**
 * A range of wavelengths whose power is told. An end that two bands share belongs to the longer one [iso21348]; 100, 400
 * and 3000 nm, where no such band goes on, belong to theirs. Ultraviolet A and visible overlap from 380 to 400 nm.
 */
public enum SpectralBand {
    UVC("uvc", "UVC", 100, below(280)),
    UVB("uvb", "UVB", 280, below(315)),
    UVA("uva", "UVA", 315, 400),
    VISIBLE("visible", "visible", 380, below(780)),
    IR_A("irA", "IR-A", 780, below(1400)),
    IR_B("irB", "IR-B", 1400, 3000),
    /** What does not reach the ground, 100 to 290 nm; part of the bands above. */
    BELOW_290("below290", "below 290 nm", 100, below(290));

    private final String code;
    private final String words;
    private final double lowNanometres;
    private final double highNanometres;

    SpectralBand(String code, String words, double lowNanometres, double highNanometres) {
        this.code = code;
        this.words = words;
        this.lowNanometres = lowNanometres;
        this.highNanometres = highNanometres;
    }

    /** The name in documents. */
    public String code() {
        return code;
    }

    public double lowNanometres() {
        return lowNanometres;
    }

    public double highNanometres() {
        return highNanometres;
    }

    /** The name in sentences. */
    String words() {
        return words;
    }

    double wattsPerSquareMetre(Spectrum spectrum) {
        return wattsPerSquareMetre(spectrum, Range.ALL);
    }

    /** What of the band lies in a range too. */
    double wattsPerSquareMetre(Spectrum spectrum, Range range) {
        double from = Math.max(lowNanometres, range.fromNanometres());
        double to = Math.min(highNanometres, range.toNanometres());
        return from < to ? Weight.oneFrom(from, to).of(spectrum) : 0;
    }

    /** Whether a range holds the whole band. */
    public boolean isWithin(Range range) {
        return range.fromNanometres() <= lowNanometres && range.toNanometres() >= highNanometres;
    }

    private static double below(double nanometres) {
        return Math.nextDown(nanometres);
    }
}
