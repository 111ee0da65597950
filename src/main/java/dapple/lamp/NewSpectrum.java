package dapple.lamp;

import dapple.light.spectrum.Spectrum;

/**
 * A spectrum to be filed.
 *
 * @param content as it was given
 * @param spectrum what the content says
 * @param personId who files it
 */
record NewSpectrum(String source, String content, Spectrum spectrum, long personId) {}
