package dapple.lamp;

import dapple.drawing.BeamPlot;
import dapple.drawing.PlotSize;
import dapple.light.photometry.Lm63;
import dapple.light.photometry.PhotometricFile;
import java.util.Optional;

/**
 * A photometric file as the page of its model shows it.
 *
 * @param unevenness how far it differs around the aim, over the intensity along the aim
 */
record PhotometryShown(
        PhotometryFiled filed,
        double candelaAlongAim,
        double lumens,
        double unevenness,
        BeamPlot wide,
        BeamPlot narrow) {
    /** From here the page says that the beam is not round: ours. */
    private static final double UNEVEN = 0.1;

    static Optional<PhotometryShown> of(PhotometryFiled filed) {
        return Lm63.read(filed.content()) instanceof Lm63.Outcome.Read read
                ? PhotometryRules.shape(read.file()).map(shape -> of(filed, read.file(), shape))
                : Optional.empty();
    }

    private static PhotometryShown of(PhotometryFiled filed, PhotometricFile file, LampShape.Measured shape) {
        return new PhotometryShown(
                filed,
                file.intensities().candelaAlongAim(),
                file.intensities().lumens(),
                file.intensities().unevenness(),
                BeamPlot.of(shape.relative(), PlotSize.WIDE),
                BeamPlot.of(shape.relative(), PlotSize.NARROW));
    }

    public boolean isUneven() {
        return unevenness > UNEVEN;
    }
}
