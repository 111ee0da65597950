package dapple.lamp;

import dapple.lamp.SpectrumText.Outcome;
import dapple.light.spectrum.Spectrum;

/**
 * A spectrum to be filed.
 *
 * @param content as it was given
 * @param spectrum what the content says
 * @param personId who files it
 */
public record NewSpectrum(String source, String content, Spectrum spectrum, long personId) {
    /**
     * A spectrum from its text.
     *
     * @throws IllegalArgumentException if the text is none
     */
    public static NewSpectrum of(String source, String content, long personId) {
        if (SpectrumText.read(content) instanceof Outcome.Read read) {
            return new NewSpectrum(source, content, read.spectrum(), personId);
        }
        throw new IllegalArgumentException("not the text of a spectrum");
    }
}
