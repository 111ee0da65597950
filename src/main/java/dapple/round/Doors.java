package dapple.round;

import dapple.enclosure.EnclosureFacts;
import dapple.site.NotFoundException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.util.MultiValueMap;

/**
 * The enclosures of a site as the form of a round shows them: which are walked, and in which order.
 *
 * @param all by room and door
 */
record Doors(List<Door> all) {
    private static final String WALKED = "walked";
    private static final String PLACE = "place-";

    /** As they are stored; places are named only where the order is another than that of rooms and doors. */
    static Doors stored(List<EnclosureFacts> enclosures, List<Long> walked) {
        List<EnclosureFacts> shown = enclosures.stream()
                .filter(one -> one.isInUse() || walked.contains(one.id()))
                .toList();
        List<Long> byDoor =
                shown.stream().map(EnclosureFacts::id).filter(walked::contains).toList();
        boolean isByDoor = byDoor.equals(walked);
        return new Doors(shown.stream()
                .map(one -> new Door(one, walked.contains(one.id()), isByDoor ? "" : place(walked, one.id())))
                .toList());
    }

    /** As somebody typed them. */
    static Doors typed(List<EnclosureFacts> enclosures, MultiValueMap<String, String> typed) {
        Set<String> walked = Set.copyOf(typed.getOrDefault(WALKED, List.of()));
        List<Door> doors = enclosures.stream()
                .filter(one -> one.isInUse() || walked.contains(Long.toString(one.id())))
                .map(one -> new Door(
                        one, walked.contains(Long.toString(one.id())), place(typed.getFirst(PLACE + one.id()))))
                .toList();
        long found = doors.stream().filter(Door::isWalked).count();
        if (found < walked.size()) {
            throw new NotFoundException();
        }
        return new Doors(doors);
    }

    private static String place(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    private static String place(List<Long> walked, long enclosureId) {
        return walked.contains(enclosureId) ? Integer.toString(walked.indexOf(enclosureId) + 1) : "";
    }

    /** Rooms in walking order, each with its doors. */
    public Map<String, List<Door>> byRoom() {
        return all.stream()
                .collect(Collectors.groupingBy(
                        door -> door.enclosure().room(), LinkedHashMap::new, Collectors.toList()));
    }

    public boolean isNoneWalked() {
        return all.stream().noneMatch(Door::isWalked);
    }

    public long wrong() {
        return all.stream().filter(Door::isWrong).count();
    }

    /** The order of the walk: by room and door, but for those of which the place is named. */
    List<Long> inOrder() {
        List<Door> walked = all.stream().filter(Door::isWalked).toList();
        List<Long> order = new ArrayList<>(walked.stream()
                .filter(door -> door.number().isEmpty())
                .map(door -> door.enclosure().id())
                .toList());
        int free = 0;
        for (Door door : named(walked)) {
            int place = Math.max(free, door.number().orElseThrow() - 1);
            order.add(Math.min(place, order.size()), door.enclosure().id());
            free = place + 1;
        }
        return order;
    }

    private static List<Door> named(List<Door> walked) {
        return walked.stream()
                .filter(door -> door.number().isPresent())
                .sorted(Comparator.comparing(door -> door.number().orElseThrow()))
                .toList();
    }
}
