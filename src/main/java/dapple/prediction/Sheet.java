package dapple.prediction;

import dapple.rig.CoverFacts;
import dapple.rig.FittingFacts;
import dapple.rig.FurnitureFacts;
import dapple.rig.Rig;
import dapple.rig.Span;
import java.time.Instant;
import java.util.Optional;
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

    /** Since when the part is as it is, which nothing can be done to before; empty if it comes, or is gone by now. */
    Optional<Instant> partSince() {
        Rig rig = place.rig();
        Stream<Span> spans = switch (task.things()) {
            case "lamps" ->
                rig.fittings().stream()
                        .filter(fitting -> fitting.id() == partId)
                        .map(FittingFacts::span);
            case "cover" ->
                rig.covers().stream().filter(cover -> cover.id() == partId).map(CoverFacts::span);
            default ->
                rig.furniture().stream().filter(item -> item.id() == partId).map(FurnitureFacts::span);
        };
        return spans.map(Span::from).findFirst();
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
