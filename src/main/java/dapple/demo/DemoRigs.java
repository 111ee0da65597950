package dapple.demo;

import dapple.demo.DemoRigRows.Hung;
import dapple.demo.DemoRigRows.Lid;
import dapple.lamp.LampArranging;
import dapple.lamp.RetiredFor;
import dapple.light.geometry.Vec;
import dapple.rig.Circuits;
import dapple.rig.CoverStep;
import dapple.rig.FirstRig;
import dapple.rig.FittingFacts;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.Mount;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigStep;
import dapple.rig.Rigs;
import dapple.site.Given;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's invented rigs: as they were found when recording began, and what became of four of them. */
@Component
@Profile("demo")
class DemoRigs {
    /** How high the lamp of E05 hangs since somebody has lowered it, m. */
    private static final double LOWERED_METRES = 1.1;

    /** How high the lamp of E09 hangs since then by the record alone, m. */
    private static final double RAISED_METRES = 1.22;

    private final RigChanging changing;
    private final Rigs rigs;
    private final Circuits circuits;
    private final LampArranging arranging;

    DemoRigs(RigChanging changing, Rigs rigs, Circuits circuits, LampArranging arranging) {
        this.changing = changing;
        this.rigs = rigs;
        this.circuits = circuits;
        this.arranging = arranging;
    }

    /** Puts on record what hangs and stands in an enclosure; nothing where nobody has measured it. */
    void hang(Stage stage, Place place, Instant at) {
        List<LampStep.Fit> lamps = stage.rows().fittings().stream()
                .filter(hung -> hung.enclosure().equals(place.code()))
                .map(hung -> fit(stage, place, hung))
                .toList();
        if (!lamps.isEmpty()) {
            changing.setUpFirst(
                    entry(stage, place, at, "Found at the first survey"),
                    new FirstRig(
                            lamps,
                            stage.rows().covers().stream()
                                    .filter(lid -> lid.enclosure().equals(place.code()))
                                    .map(Lid::cover)
                                    .toList(),
                            stage.rows().furniture().stream()
                                    .filter(piece -> piece.enclosure().equals(place.code()))
                                    .map(DemoRigRows.Piece::furniture)
                                    .toList()));
        }
    }

    /** Swaps the lamps of an enclosure when their light had become weak; what goes is retired. */
    void swap(Stage stage, Place place, Consumer<Instant> time) {
        stage.rows().fittings().stream()
                .filter(hung -> hung.enclosure().equals(place.code()))
                .flatMap(hung -> stage.swaps(hung.tag()))
                .sorted(Comparator.comparing(swap -> swap.to().from()))
                .forEach(swap -> swap(stage, place, swap, time));
    }

    private void swap(Stage stage, Place place, Swapped swapped, Consumer<Instant> time) {
        Instant at = swapped.to().from();
        String old = swapped.from().tag();
        time.accept(at);
        long fitting = fitting(stage, place, at, old).id();
        LampStep step = new LampStep.Swap(fitting, stage.lamp(swapped.to().tag()));
        make(stage, place, at, "Swapped for a new one", step);
        arranging.retire(stage.members().siteId(), stage.lamp(old), RetiredFor.WORN_OUT);
    }

    private LampStep.Fit fit(Stage stage, Place place, Hung hung) {
        long circuit = stage.circuits()
                .computeIfAbsent(
                        hung.circuit(),
                        name -> circuits.add(stage.members().siteId(), Optional.of(place.roomId()), name)
                                .id());
        Hanging hanging = new Hanging(
                hung.place(), Optional.of(hung.mount()), Optional.of(hung.timer()), Optional.of(circuit), hung.gear());
        return new LampStep.Fit(stage.lamp(stage.firstTag(hung.tag())), hanging);
    }

    /** Changes a rig as the story wants it; its readings jump then. */
    void change(Stage stage, Place place, Instant at) {
        switch (place.code()) {
            case "E05" -> lower(stage, place, at);
            case "E07" ->
                make(stage, place, at, "Locusts kept escaping", new CoverStep.Put(Lid.mesh("fine mesh", 0.61, 0.3, 1)));
            case "E09" -> raiseOnRecordAlone(stage, place, at);
            case "E11" ->
                make(
                        stage,
                        place,
                        at,
                        "The old tube flickered; no mild one was in store",
                        new LampStep.Swap(fitting(stage, place, at, "L24").id(), stage.lamp("L25")));
            default -> throw new IllegalArgumentException("no change of the rig is told of " + place.code());
        }
    }

    /** What is on record was never done: the readings go on as before, and commissioning says that they disagree. */
    private void raiseOnRecordAlone(Stage stage, Place place, Instant at) {
        rehang(stage, place, at, "L22", RAISED_METRES, "To hang 30 cm higher: the frogs sit close to the mesh");
    }

    private void lower(Stage stage, Place place, Instant at) {
        rehang(stage, place, at, "L18", LOWERED_METRES, "Hung lower, so that it warms the perch");
    }

    private void rehang(Stage stage, Place place, Instant at, String tag, double heightMetres, String note) {
        FittingFacts lamp = fitting(stage, place, at, tag);
        Mount mount = lamp.hanging().mount().orElseThrow();
        Vec there = new Vec(mount.centre().x(), mount.centre().y(), heightMetres);
        Mount rehung = new Mount(there, mount.aim(), mount.along());
        make(stage, place, at, note, new LampStep.Move(lamp.id(), lamp.hanging().place(), Optional.of(rehung)));
    }

    private FittingFacts fitting(Stage stage, Place place, Instant at, String tag) {
        return rigs.at(stage.members().siteId(), place.enclosureId(), at).fittings().stream()
                .filter(fitting -> fitting.lamp().tag().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    private void make(Stage stage, Place place, Instant at, String note, RigStep step) {
        changing.make(entry(stage, place, at, note), step);
    }

    private static RigEntry entry(Stage stage, Place place, Instant at, String note) {
        return new RigEntry(
                stage.members().siteId(),
                place.enclosureId(),
                at,
                note,
                stage.members().supervisor(),
                UUID.randomUUID(),
                Optional.empty());
    }

    private record Swapped(DemoLampLife.Turn from, DemoLampLife.Turn to) {}

    /** Where a rig is. */
    record Place(String code, long roomId, long enclosureId) {}

    /** What there is to hang, and who hangs it. */
    record Stage(
            DemoTeam.Members members,
            DemoRigRows rows,
            DemoPast past,
            Map<String, Long> lampsByTag,
            Map<String, Long> circuits) {
        static Stage of(DemoStory story, Map<String, Long> lampsByTag) {
            return new Stage(story.members(), story.tables().rigRows(), story.past(), lampsByTag, new HashMap<>());
        }

        /** Of the lamp that hung there first. */
        String firstTag(String tag) {
            return past.life(tag).map(DemoLampLife::firstTag).orElseThrow();
        }

        private Stream<Swapped> swaps(String tag) {
            List<DemoLampLife.Turn> turns =
                    past.life(tag).map(DemoLampLife::turns).orElseThrow();
            return IntStream.range(1, turns.size())
                    .mapToObj(index -> new Swapped(turns.get(index - 1), turns.get(index)));
        }

        long lamp(String tag) {
            return Given.of(lampsByTag.get(tag));
        }
    }
}
