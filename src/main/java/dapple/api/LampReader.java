package dapple.api;

import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads the lamps of a scene. */
final class LampReader {
    static final int MOST_LAMPS = 200;
    private static final int MOST_OUTPUTS = 100;

    private LampReader() {}

    static List<Lamp> read(Part part) {
        List<Lamp> lamps = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Part item : part.atMost(MOST_LAMPS, "lamps")) {
            Lamp lamp = lamp(item.object("id", "centre", "aim", "source", "output"));
            if (!ids.add(lamp.id())) {
                throw item.need("id").fault("Another lamp has this id already.");
            }
            lamps.add(lamp);
        }
        return lamps;
    }

    private static Lamp lamp(Part part) {
        String id = part.need("id").name();
        Vec centre = part.need("centre").place();
        Source source = SourceReader.read(part.need("source"));
        Vec aim = aim(part, source);
        return new Lamp(id, centre, aim, source, outputs(part, new OutputReader(centre, aim, source)));
    }

    /** What emits all round needs no aim, unless a reading's distance is along it. */
    private static Vec aim(Part part, Source source) {
        boolean needed = !SourceReader.isAllRound(source)
                || part.need("output").items().stream().anyMatch(output -> output.has("distance"));
        if (!needed && !part.has("aim")) {
            return new Vec(0, 0, -1);
        }
        Part aim = part.need("aim");
        Vec direction = aim.direction();
        SourceReader.requirePerpendicular(aim, direction, source);
        return direction;
    }

    private static List<Output> outputs(Part part, OutputReader reader) {
        List<Part> items = part.need("output").atMost(MOST_OUTPUTS, "outputs of one lamp");
        if (items.isEmpty()) {
            throw part.need("output").fault("A lamp must name at least one quantity that it gives.");
        }
        items.forEach(reader::read);
        return reader.outputs();
    }
}
