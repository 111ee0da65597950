package dapple.prediction;

import dapple.rig.CoverFacts;
import dapple.rig.FittingFacts;
import dapple.rig.FurnitureFacts;
import java.util.stream.Stream;

/**
 * One form for one part of one rig.
 *
 * @param partId 0 for a part that comes
 */
record Sheet(RigPlace place, Task task, long partId) {
    String path() {
        return task.path(place.enclosure().id(), partId);
    }

    /** What the part is called; nothing if it comes, or is gone by now. */
    String partName() {
        return switch (task.things()) {
            case "lamps" ->
                name(place.rig().fittings().stream()
                        .filter(fitting -> fitting.id() == partId)
                        .map(Sheet::name));
            case "cover" ->
                name(place.rig().covers().stream()
                        .filter(cover -> cover.id() == partId)
                        .map(Sheet::name));
            default ->
                name(place.rig().furniture().stream()
                        .filter(item -> item.id() == partId)
                        .map(Sheet::name));
        };
    }

    private static String name(Stream<String> names) {
        return names.findFirst().orElse("");
    }

    private static String name(FittingFacts fitting) {
        return fitting.lamp().tag() + ", " + fitting.hanging().place();
    }

    private static String name(CoverFacts cover) {
        return cover.cover().name();
    }

    private static String name(FurnitureFacts item) {
        return item.furniture().name();
    }
}
