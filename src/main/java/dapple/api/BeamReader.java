package dapple.api;

import dapple.light.photometry.Intensities;
import dapple.light.photometry.Lm63;
import dapple.light.source.Beam;
import java.util.List;

/** Reads how a beam spreads: by an exponent, a beam angle or a table. */
final class BeamReader {
    private static final int MOST_ROWS = 2000;

    /** How far light may differ around the aim, over that along it, and still count as round: our own choice. */
    private static final double MOST_UNEVEN = 0.05;

    private static final String NOT_ROUND =
            "Beams are round here: this file's light must go along the aim, and around it"
                    + " differ by at most 5 % of that.";

    private BeamReader() {}

    static Beam read(Part source) {
        String kind = source.oneOf("exponent", "beamAngle", "table", "ies");
        Part part = source.need(kind);
        return switch (kind) {
            case "exponent" -> new Beam.Power(part.number(0, 100_000));
            case "beamAngle" -> Beam.Power.ofBeamAngle(part.number(0.5, 179.9));
            case "table" -> table(part);
            default -> photometric(part);
        };
    }

    private static Beam photometric(Part part) {
        Lm63.Outcome outcome = Lm63.read(part.text());
        if (outcome instanceof Lm63.Outcome.Refused refused) {
            throw part.fault((refused.line() == 0 ? "" : "Line " + refused.line() + ": ") + refused.reason());
        }
        Intensities intensities = ((Lm63.Outcome.Read) outcome).file().intensities();
        if (!(intensities.unevenness() <= MOST_UNEVEN)) {
            throw part.fault(NOT_ROUND);
        }
        return intensities.beam().orElseThrow(() -> part.fault(NOT_ROUND));
    }

    private static Beam table(Part part) {
        part.object("theta", "relative");
        double[] theta = angles(part.need("theta"));
        double[] relative = intensities(part.need("relative"));
        if (theta.length != relative.length) {
            throw part.need("relative").fault("There must be as many intensities as angles.");
        }
        return new Beam.Table(theta, relative);
    }

    private static double[] angles(Part part) {
        List<Part> items = rows(part);
        double[] theta = new double[items.size()];
        for (int row = 0; row < theta.length; row++) {
            theta[row] = items.get(row).number(0, 180);
            if (row == 0 && theta[0] != 0) {
                throw items.get(0).fault("The first angle must be 0.");
            }
            if (row > 0 && !(theta[row] > theta[row - 1])) {
                throw items.get(row).fault("The angles must ascend.");
            }
        }
        return theta;
    }

    private static double[] intensities(Part part) {
        List<Part> items = rows(part);
        double[] relative =
                items.stream().mapToDouble(item -> item.number(0, 1e6)).toArray();
        if (relative[0] != 1) {
            throw items.get(0).fault("The first intensity must be 1.");
        }
        return relative;
    }

    private static List<Part> rows(Part part) {
        List<Part> items = part.atMost(MOST_ROWS, "rows of a table");
        if (items.size() < 2) {
            throw part.fault("A table must have two rows or more.");
        }
        return items;
    }
}
