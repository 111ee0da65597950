package dapple.draft;

import dapple.draft.RigDifference.Change;
import dapple.lamp.LampFacts;
import dapple.light.geometry.Vec;
import dapple.rig.FittingFacts;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.Mount;
import dapple.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What must be done to the lamps: a lamp that hangs here already is hung otherwise, not swapped. */
final class LampDifference {
    /** A direction that was stored and read again may differ in its last digit. */
    private static final double SAME = 1e-9;

    private LampDifference() {}

    static List<Change> between(Rig installed, DraftRig draft, Stock stock) {
        List<Change> changes = new ArrayList<>();
        installed.fittings().stream()
                .filter(fitting -> !isDrafted(fitting, draft))
                .map(fitting -> Change.of(new Deed.TakeOut(fitting), new LampStep.TakeOut(fitting.id())))
                .forEach(changes::add);
        for (int number = 0; number < draft.lamps().size(); number++) {
            DraftLamp lamp = draft.lamps().get(number);
            changes.addAll(lamp(installed, lamp, stock.lamp(lamp.lamp(), number)));
        }
        return changes;
    }

    private static boolean isDrafted(FittingFacts fitting, DraftRig draft) {
        return draft.lamps().stream()
                .anyMatch(lamp ->
                        lamp.lamp().equals(new LampPick.Stock(fitting.lamp().id())));
    }

    private static List<Change> lamp(Rig installed, DraftLamp drafted, LampFacts lamp) {
        Hanging hanging = drafted.hanging();
        if (drafted.lamp() instanceof LampPick.Model) {
            return List.of(new Change(List.of(new Deed.Buy(lamp, hanging)), List.of()));
        }
        Optional<FittingFacts> before = installed.fittings().stream()
                .filter(fitting -> fitting.lamp().id() == lamp.id())
                .findFirst();
        return before.map(fitting -> changed(fitting, hanging))
                .orElseGet(
                        () -> List.of(Change.of(new Deed.Hang(lamp, hanging), new LampStep.Fit(lamp.id(), hanging))));
    }

    /** Each part is touched once, so that several changes of one hang it anew. */
    private static List<Change> changed(FittingFacts before, Hanging after) {
        List<Change> changes = Stream.of(moved(before, after), timed(before, after), fed(before, after))
                .flatMap(Optional::stream)
                .toList();
        return changes.size() < 2
                ? changes
                : List.of(new Change(
                        changes.stream()
                                .flatMap(change -> change.deeds().stream())
                                .toList(),
                        List.of(
                                new LampStep.TakeOut(before.id()),
                                new LampStep.Fit(before.lamp().id(), after))));
    }

    private static Optional<Change> moved(FittingFacts before, Hanging after) {
        boolean isMoved = !before.hanging().place().equals(after.place())
                || !isSame(before.hanging().mount(), after.mount());
        return Optional.of(Change.of(
                        new Deed.Rehang(before, after), new LampStep.Move(before.id(), after.place(), after.mount())))
                .filter(change -> isMoved);
    }

    private static Optional<Change> timed(FittingFacts before, Hanging after) {
        boolean isTimed = !before.hanging().timer().equals(after.timer())
                || !before.hanging().circuitId().equals(after.circuitId());
        return Optional.of(Change.of(
                        new Deed.Retime(before, after),
                        new LampStep.SetTimer(before.id(), after.timer(), after.circuitId())))
                .filter(change -> isTimed);
    }

    private static Optional<Change> fed(FittingFacts before, Hanging after) {
        return Optional.of(Change.of(new Deed.Regear(before, after), new LampStep.SetGear(before.id(), after.gear())))
                .filter(change -> !before.hanging().gear().equals(after.gear()));
    }

    private static boolean isSame(Optional<Mount> one, Optional<Mount> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() && other.isEmpty();
        }
        return isSame(one.get().centre(), other.get().centre())
                && isSame(one.get().aim(), other.get().aim())
                && one.get().along().isPresent() == other.get().along().isPresent()
                && one.get()
                        .along()
                        .flatMap(along -> other.get().along().map(way -> isSame(along, way)))
                        .orElse(true);
    }

    private static boolean isSame(Vec one, Vec other) {
        return one.minus(other).length() < SAME;
    }
}
