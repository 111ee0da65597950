package dapple.light.spectrum;

/**
 * The tables that a spectrum is judged by.
 *
 * @param actinic ultraviolet hazard to skin and eyes, 1 at 270 nm, straight in the logarithm [icnirp2004]
 * @param previtaminD3 1 at 298 nm, straight [cie174]
 * @param photopic V(λ), 1 at 555 nm, straight [cie018]
 */
public record SpectrumTables(Weight actinic, Weight previtaminD3, Weight photopic, StandardSun sun) {
    /**
     * The sun that shares are compared with.
     *
     * @param name which one, for whoever reads the ratios
     */
    public record StandardSun(String name, Spectrum spectrum) {
        /** The share of a range's power that lies in a band, 0 where the range has none. */
        public double share(SpectralBand band, Range range) {
            double all = range.wattsPerSquareMetre(spectrum);
            return all > 0 ? Math.min(1, band.wattsPerSquareMetre(spectrum, range) / all) : 0;
        }
    }
}
