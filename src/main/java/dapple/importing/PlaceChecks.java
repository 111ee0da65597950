package dapple.importing;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.InnerSize;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.Subject;
import dapple.importing.sheet.Words;
import dapple.light.judging.PointRole;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Holds rooms, enclosures and points of the sheets against the record. */
final class PlaceChecks {
    /** What rounds read in every enclosure. */
    static final List<PointRole> STANDARD =
            List.of(PointRole.BASKING, PointRole.GRADIENT, PointRole.SHADE, PointRole.NEAREST_REACHABLE);

    private static final List<Field> SIZE =
            List.of(Field.ENCLOSURE_WIDTH, Field.ENCLOSURE_DEPTH, Field.ENCLOSURE_HEIGHT);
    private static final List<Field> POSITION = List.of(Field.POINT_X, Field.POINT_Y, Field.POINT_Z);
    private static final int LONGEST_CODE = 10;

    private final Checking on;
    private final String roomUnsaid;

    /** @param roomUnsaid the name of the room of enclosures of which no room is said */
    PlaceChecks(Checking on, String roomUnsaid) {
        this.on = on;
        this.roomUnsaid = roomUnsaid;
    }

    void check() {
        on.book().all(Subject.ENCLOSURE).forEach(this::enclosure);
        on.book().all(Subject.POINT).forEach(this::enter);
        on.book()
                .all(Subject.ROOM)
                .forEach(room ->
                        Known.in(on.known().rooms(), room.key()).ifPresent(known -> room.isOnRecordAs(known.id())));
        on.book().all(Subject.POINT).stream().filter(Entry::isNew).forEach(this::point);
        on.book().fresh(Subject.POINT).stream().filter(PlaceChecks::isByRole).forEach(this::join);
        nameNewPoints();
    }

    private void enclosure(Entry entry) {
        Optional<EnclosureFacts> known = Known.in(on.known().enclosures(), entry.key());
        known.ifPresent(facts -> compare(entry, facts));
        if (known.isEmpty()) {
            allOrNone(entry, SIZE);
            room(entry);
        }
        if (entry.fact(Field.STANDARD_POINTS, YesNo.class).equals(Optional.of(YesNo.YES)) && !entry.isLeftOut()) {
            STANDARD.forEach(role -> byRole(entry, role));
        }
    }

    private void compare(Entry entry, EnclosureFacts facts) {
        entry.isOnRecordAs(facts.id());
        on.compare(entry, Field.ENCLOSURE_WIDTH, facts.size().map(InnerSize::widthMetres));
        on.compare(entry, Field.ENCLOSURE_DEPTH, facts.size().map(InnerSize::depthMetres));
        on.compare(entry, Field.ENCLOSURE_HEIGHT, facts.size().map(InnerSize::heightMetres));
        entry.text(Field.ROOM_NAME)
                .filter(room -> !Keys.of(room).equals(Keys.of(facts.room())))
                .ifPresent(other -> on.compare(entry, Field.ROOM_NAME, Optional.of(facts.room())));
    }

    private void allOrNone(Entry entry, List<Field> fields) {
        long given = fields.stream().filter(entry.facts()::containsKey).count();
        if (given > 0 && given < fields.size()) {
            fields.stream()
                    .filter(field -> !entry.facts().containsKey(field))
                    .findFirst()
                    .ifPresent(field -> on.missing(entry, field));
        }
    }

    /** Where no room is said: the only one that the site has, else one for all such. */
    private void room(Entry entry) {
        if (entry.isNew() && entry.text(Field.ROOM_NAME).isEmpty()) {
            String name = on.known().rooms().size() == 1
                    ? on.known().rooms().values().iterator().next().name()
                    : roomUnsaid;
            entry.put(Field.ROOM_NAME, name);
            on.book().entry(Subject.ROOM, Keys.of(name), name, entry.origin());
        }
    }

    private Entry byRole(Entry enclosure, PointRole role) {
        Entry point = on.book().entry(Subject.POINT, Keys.role(enclosure.key(), role), role.name(), enclosure.origin());
        point.put(Field.ENCLOSURE_CODE, enclosure.key());
        point.put(Field.POINT_ROLE, role);
        return point;
    }

    private static boolean isByRole(Entry point) {
        return point.key().contains("\n\n");
    }

    /** Whatever names a point names its enclosure as well. */
    private void enter(Entry point) {
        Known.in(on.known().points(), point.key()).ifPresent(point::isOnRecordAs);
        String in = point.text(Field.ENCLOSURE_CODE).orElse("");
        if (on.book().find(Subject.ENCLOSURE, in).isEmpty()) {
            enclosure(on.book().entry(Subject.ENCLOSURE, in, in, point.origin()));
        }
    }

    private void point(Entry point) {
        Optional<Entry> enclosure = on.named(point, Field.ENCLOSURE_CODE, Subject.ENCLOSURE);
        Optional<PointRole> meant = Words.find("role", PointRole.class, point.name());
        if (enclosure.isEmpty()) {
            point.leaveOut();
        } else if (point.fact(Field.POINT_ROLE, PointRole.class).isPresent()) {
            allOrNone(point, POSITION);
        } else if (meant.isPresent()) {
            Entry same = byRole(enclosure.get(), meant.get());
            Known.in(on.known().points(), same.key()).ifPresent(same::isOnRecordAs);
            same.say(Field.READ_QUANTITY, point.all(Field.READ_QUANTITY), field -> {});
            point.isSameAs(same);
        } else {
            on.bad(point, Reason.POINT_ROLE_NEEDED, enclosure.get().name() + " " + point.name());
        }
    }

    /** A point that a column names by its role is the one that the sheets name otherwise, where there is one. */
    private void join(Entry byRole) {
        on.book().fresh(Subject.POINT).stream()
                .filter(other -> !isByRole(other)
                        && other.facts().get(Field.POINT_ROLE) == byRole.facts().get(Field.POINT_ROLE)
                        && other.text(Field.ENCLOSURE_CODE).equals(byRole.text(Field.ENCLOSURE_CODE)))
                .findFirst()
                .ifPresent(same -> {
                    same.say(Field.READ_QUANTITY, byRole.all(Field.READ_QUANTITY), field -> {});
                    byRole.isSameAs(same);
                });
    }

    private void nameNewPoints() {
        Map<String, Set<String>> used = new HashMap<>();
        List<Entry> fresh = on.book().fresh(Subject.POINT);
        fresh.stream().filter(point -> isCode(point)).forEach(point -> {
            point.put(Field.POINT_CODE, point.name());
            used(used, point).add(point.name().toLowerCase(Locale.ROOT));
        });
        fresh.stream()
                .filter(point -> !isCode(point))
                .sorted(Comparator.comparing((Entry point) ->
                        point.fact(Field.POINT_ROLE, PointRole.class).orElse(PointRole.KEEPER)))
                .forEach(point -> point.put(Field.POINT_CODE, free(used(used, point))));
    }

    private static boolean isCode(Entry point) {
        return !isByRole(point) && point.name().length() <= LONGEST_CODE;
    }

    private Set<String> used(Map<String, Set<String>> used, Entry point) {
        String in = point.text(Field.ENCLOSURE_CODE).orElse("");
        return used.computeIfAbsent(
                in, key -> new HashSet<>(on.known().pointCodes().getOrDefault(key, Set.of())));
    }

    private static String free(Set<String> used) {
        int number = 1;
        while (!used.add("p" + number)) {
            number++;
        }
        return "P" + number;
    }
}
