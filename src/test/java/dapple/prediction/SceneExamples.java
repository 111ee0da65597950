package dapple.prediction;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalKind;
import dapple.animal.BodyLengthFacts;
import dapple.animal.Occupant;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Facing;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.light.judging.Band;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import dapple.rig.RigScene;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import dapple.target.Target;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An enclosure 1.2 m wide, 0.6 m deep and 0.8 m high, in which one animal lives; all of it is invented. */
final class SceneExamples {
    static final InnerSize SIZE = new InnerSize(1.2, 0.6, 0.8);
    static final PointFacts BASKING = point("P1", 0.6, 0.6);

    private SceneExamples() {}

    static PointFacts point(String code, double x, double z) {
        return new PointFacts(
                1,
                1,
                code,
                "a place",
                PointRole.BASKING,
                Facing.STRONGEST,
                Optional.of(new Position(x, 0.3, z)),
                List.of(Quantity.UV_INDEX),
                Set.of());
    }

    static EnclosureScene scene(Rig rig, PointFacts... points) {
        return scene(
                rig,
                List.of(points),
                limit(Quantity.UV_INDEX, LimitPlace.BASKING, new Band(0.4, 1.5)),
                limit(Quantity.UV_INDEX, LimitPlace.SHADE, Band.atMost(0.1)),
                limit(Quantity.UV_INDEX, LimitPlace.CEILING, Band.atMost(3)));
    }

    static EnclosureScene scene(Rig rig, List<PointFacts> points, SourcedLimit... limits) {
        SpeciesNeed need = need(limits);
        AnimalFacts animal = new AnimalFacts(1, "2026-1", "Basil", 1, AnimalKind.INDIVIDUAL, Pigment.NORMAL);
        BodyLengthFacts length = new BodyLengthFacts(0.2, LocalDate.of(2026, 5, 4));
        return new EnclosureScene(
                new EnclosureFacts(1, "E1", 1, "Room", Optional.of(SIZE), Optional.empty()),
                RigScene.of(rig),
                points,
                List.of(new Occupant(animal, "Species", Reach.EVERYWHERE, Optional.of(length))),
                List.of(need),
                Optional.of(need));
    }

    static SpeciesNeed need(SourcedLimit... limits) {
        Target target = new Target(
                1,
                1,
                1,
                new UvZone(2, LightMethod.SUNBEAM),
                RigExamples.SOME_DAY,
                RigExamples.SOME_DAY,
                List.of(limits));
        return new SpeciesNeed(1, "Species", Optional.of(target), Optional.empty());
    }

    static SourcedLimit limit(Quantity quantity, LimitPlace place, Band band) {
        return new SourcedLimit(quantity, place, band, SourceMark.COMMON_PRACTICE, "invented for a test");
    }
}
