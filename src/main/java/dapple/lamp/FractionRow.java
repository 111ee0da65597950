package dapple.lamp;

import dapple.light.spectrum.SpectralBand;

/**
 * One fraction of a lamp's light beside the sun's.
 *
 * @param isCovered whether the spectrum covers the whole of it; if not, the amounts are unknown
 * @param share of the spectrum's whole irradiance
 * @param sunShare of the standard sun's at the same wavelengths
 */
record FractionRow(SpectralBand band, boolean isCovered, double wattsPerSquareMetre, double share, double sunShare) {}
