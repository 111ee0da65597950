package dapple.exposure;

import dapple.animal.StayFacts;
import dapple.enclosure.PlannedOffTime;
import dapple.light.dose.Circumstance;
import dapple.light.dose.Span;
import dapple.light.dose.Spell;
import dapple.rig.RigChangeFacts;
import dapple.rig.RigChangeKind;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Cuts a stay where readings before say nothing of what came after. */
final class Spells {
    /** Another timer changes for how long the light is there, not the light; what was found first was there before. */
    private static final Set<RigChangeKind> NO_OTHER_LIGHT =
            EnumSet.of(RigChangeKind.TIMER_CHANGED, RigChangeKind.FIRST_SET_UP);

    private Spells() {}

    /**
     * Of stays, oldest first. Where one goes on from another in the same enclosure, as after an animal has left its
     * group there, the light went on too.
     */
    static List<Spell> of(List<StayFacts> stays, List<RigChangeFacts> changes, List<PlannedOffTime> plannedOff) {
        return joined(stays).stream()
                .flatMap(stay -> of(stay, changes, plannedOff).stream())
                .toList();
    }

    private static List<StayFacts> joined(List<StayFacts> stays) {
        Deque<StayFacts> joined = new ArrayDeque<>();
        for (StayFacts stay : stays) {
            Optional<StayFacts> before = Optional.ofNullable(joined.peekLast()).filter(last -> goesOn(last, stay));
            before.ifPresent(last -> joined.removeLast());
            Instant from = before.map(StayFacts::from).orElse(stay.from());
            joined.addLast(new StayFacts(stay.id(), stay.enclosureId(), stay.animal(), from, stay.to()));
        }
        return List.copyOf(joined);
    }

    private static boolean goesOn(StayFacts last, StayFacts next) {
        return last.enclosureId() == next.enclosureId()
                && last.to().filter(next.from()::equals).isPresent();
    }

    static List<Spell> of(StayFacts stay, List<RigChangeFacts> changes, List<PlannedOffTime> plannedOff) {
        Span whole = Lived.during(stay);
        List<Span> off = plannedOff.stream()
                .filter(time -> time.enclosureId() == stay.enclosureId())
                .flatMap(time -> new Span(time.from(), time.to().orElse(Instant.MAX)).meet(whole).stream())
                .toList();
        Set<Instant> cuts = new TreeSet<>(List.of(whole.from(), whole.to()));
        off.forEach(time -> cuts.addAll(List.of(time.from(), time.to())));
        changed(stay, changes).filter(whole::contains).forEach(cuts::add);
        return between(List.copyOf(cuts), off);
    }

    private static Stream<Instant> changed(StayFacts stay, List<RigChangeFacts> changes) {
        return changes.stream()
                .filter(change -> change.enclosureId() == stay.enclosureId())
                .filter(change -> !NO_OTHER_LIGHT.contains(change.kind()))
                .map(RigChangeFacts::at);
    }

    private static List<Spell> between(List<Instant> cuts, List<Span> off) {
        List<Spell> spells = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            Span during = new Span(cuts.get(i - 1), cuts.get(i));
            boolean isOff = off.stream().anyMatch(time -> time.contains(during.from()));
            spells.add(new Spell(during, isOff ? Circumstance.PLANNED_OFF : Circumstance.UNDER_LAMPS));
        }
        return spells;
    }
}
