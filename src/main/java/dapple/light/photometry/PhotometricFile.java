package dapple.light.photometry;

import java.util.Map;
import java.util.Optional;

/**
 * What a photometric file in the form of LM-63 [iesna2002] says. It says nothing of ultraviolet or infrared.
 *
 * @param edition the year of its form: 1986, 1991, 1995 or 2002
 * @param keywords as in brackets before TILT, each with its text
 * @param lamps how many lamps it was measured with
 * @param lumensPerLamp of the bare lamp; none: the intensities are absolute
 * @param opening length, width and height of what shines
 * @param inputWatts electric power of the whole
 * @param intensities with all factors of the file taken in
 */
public record PhotometricFile(
        int edition,
        Map<String, String> keywords,
        int lamps,
        Optional<Double> lumensPerLamp,
        Opening opening,
        double inputWatts,
        Intensities intensities) {

    public PhotometricFile {
        keywords = Map.copyOf(keywords);
    }

    /** What shines, m; the sign of a measure that stands for a round shape is not kept. */
    public record Opening(double widthMetres, double lengthMetres, double heightMetres) {}

    /** The share of the bare lamps' light that leaves the whole; none where their light is not stated. */
    public Optional<Double> efficiency() {
        return lumensPerLamp.map(lumens -> intensities.lumens() / (lumens * lamps));
    }
}
