package dapple.light.spectrum;

/**
 * The sun that the shares of a spectrum's bands are compared with.
 *
 * @param name which standard sun
 * @param range the wavelengths that are compared: the sun is cut to those at which the spectrum was sampled, for else its
 *     infrared would be missed in a spectrum that ends before it
 */
public record SunCompared(String name, Range range) {}
