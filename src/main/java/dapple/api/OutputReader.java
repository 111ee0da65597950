package dapple.api;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;

/** Reads how much one lamp gives, in each quantity by readings or absolutely. */
final class OutputReader {
    private static final double MOST = 1e12;
    private static final double MOST_FACTOR = 1000;
    private static final double LEAST_FACTOR = 1e-6;
    private static final double FARTHEST = 1000;

    private final Vec centre;
    private final Vec aim;
    private final Source source;
    private final List<Output> outputs = new ArrayList<>();

    OutputReader(Vec centre, Vec aim, Source source) {
        this.centre = centre;
        this.aim = aim;
        this.source = source;
    }

    List<Output> outputs() {
        return outputs;
    }

    void read(Part part) {
        part.object(
                "quantity",
                "reading",
                "distance",
                "at",
                "facing",
                "factor",
                "intensity",
                "intensityPerLength",
                "radiance");
        Quantity quantity = part.need("quantity").quantity();
        double factor = part.find("factor")
                .map(given -> given.number(LEAST_FACTOR, MOST_FACTOR))
                .orElse(1.0);
        Output output = part.has("reading") ? reading(part, quantity, factor) : emission(part, quantity, factor);
        requireOneWay(part, output);
        outputs.add(output);
    }

    private Output reading(Part part, Quantity quantity, double factor) {
        double reading = part.need("reading").number(1e-12, MOST);
        part.object("quantity", "reading", "distance", "at", "facing", "factor");
        if (part.oneOf("distance", "at").equals("distance")) {
            part.object("quantity", "reading", "distance", "factor");
            double distance = part.need("distance").aboveZero(FARTHEST);
            return new Output.Reading(quantity, reading, centre.plus(aim.times(distance)), aim.times(-1), factor);
        }
        Vec at = part.need("at").place();
        return new Output.Reading(quantity, reading, at, part.need("facing").direction(), factor);
    }

    private Output emission(Part part, Quantity quantity, double factor) {
        String kind = part.oneOf("reading", "intensity", "intensityPerLength", "radiance");
        if (!kind.equals(SourceReader.emission(source))) {
            throw part.need(kind).fault("The emission of this shape is its " + SourceReader.emission(source) + ".");
        }
        part.object("quantity", kind, "factor");
        return new Output.Emission(quantity, part.need(kind).number(0, MOST), factor);
    }

    /** Several readings of a quantity, or one emission. */
    private void requireOneWay(Part part, Output output) {
        boolean reading = output instanceof Output.Reading;
        boolean contradicts = outputs.stream()
                .filter(other -> other.quantity() == output.quantity())
                .anyMatch(other -> !reading || other instanceof Output.Emission);
        if (contradicts) {
            throw part.need("quantity")
                    .fault("A quantity is given either by readings or once as an emission, not by both.");
        }
    }
}
