package dapple.light.spectrum;

import java.util.OptionalDouble;

/**
 * What of a spectrum lies in a band.
 *
 * @param wattsPerSquareMetre irradiance in the band
 * @param share of the spectrum's whole irradiance, 0 where that is 0; bands overlap, so shares do not add up to 1
 * @param overSun the share over the standard sun's at the same wavelengths; absent where the sun has less than a
 *     billionth in the band
 */
public record BandShare(SpectralBand band, double wattsPerSquareMetre, double share, OptionalDouble overSun) {}
