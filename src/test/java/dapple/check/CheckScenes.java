package dapple.check;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalKind;
import dapple.animal.BodyLengthFacts;
import dapple.animal.Occupant;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Facing;
import dapple.enclosure.FrontKind;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.lamp.SpectrumEvidence;
import dapple.light.judging.Band;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.light.zone.Grain;
import dapple.prediction.EnclosureScene;
import dapple.prediction.Outlook;
import dapple.prediction.SpeciesNeed;
import dapple.rig.DailyTimer;
import dapple.rig.FittingFacts;
import dapple.rig.Hanging;
import dapple.rig.Mount;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import dapple.rig.RigScene;
import dapple.site.Formats;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.target.LightHours;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import dapple.target.Target;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An enclosure of 1.20 × 0.60 × 0.80 m, whose animal is meant to bask at a UV index of 0.4 to 1.5, finds shade at 0.1 and must
 * not have 3; everything invented.
 */
final class CheckScenes {
    static final Known NOTHING = new Known(Map.of(), LocalDate.of(2026, 5, 4));
    static final LampShape SPOT = new LampShape.Spot(40, Optional.empty());
    static final LampShape TUBE = new LampShape.Line(0.55, Optional.empty(), 0);

    private static final InnerSize SIZE = new InnerSize(1.2, 0.6, 0.8);
    private static final Outlook OUTLOOK = new Outlook();

    private CheckScenes() {}

    /** A UV index of 4 and 10,000 lx at 0.3 m. */
    static LampFacts lamp(String tag, LampClass kind, LampShape shape) {
        return lamp(tag, kind, shape, new SpectrumEvidence.Missing());
    }

    static LampFacts lamp(String tag, LampClass kind, LampShape shape, LampOutput... outputs) {
        return RigExamples.lamp(tag, kind, Optional.of(shape), List.of(outputs));
    }

    static LampFacts lamp(String tag, LampClass kind, LampShape shape, SpectrumEvidence evidence) {
        List<LampOutput> outputs =
                List.of(RigExamples.output(Quantity.UV_INDEX, 4), RigExamples.output(Quantity.ILLUMINANCE, 10_000));
        LampModelFacts model =
                new LampModelFacts(1, "Model", kind, Optional.of(50.0), Optional.of(shape), outputs, evidence);
        return new LampFacts(
                tag.hashCode(), tag, model, Optional.of(0.0), Optional.empty(), List.of(), Optional.empty());
    }

    /** Hung pointing down, its length along the front. */
    static FittingFacts hung(LampFacts lamp, double x, double y, double z) {
        return RigExamples.fitting(lamp, Optional.of(RigExamples.above(x, y, z)));
    }

    static FittingFacts hung(LampFacts lamp, Mount mount) {
        return RigExamples.fitting(lamp, Optional.of(mount));
    }

    static FittingFacts timed(LampFacts lamp, int onHour, int offHour) {
        FittingFacts hung = hung(lamp, 0.6, 0.3, 0.9);
        DailyTimer timer = new DailyTimer(LocalTime.of(onHour, 0), LocalTime.of(offHour, 0));
        Hanging hanging = new Hanging("place", hung.hanging().mount(), Optional.of(timer), Optional.empty());
        return new FittingFacts(hung.id(), 1, lamp, hanging, Optional.empty(), hung.span());
    }

    static PointFacts point(String code, PointRole role, double x, double y, double z) {
        return new PointFacts(
                1,
                1,
                code,
                "a place",
                role,
                Facing.STRONGEST,
                Optional.of(new Position(x, y, z)),
                List.of(Quantity.UV_INDEX),
                Set.of());
    }

    static EnclosureScene scene(Rig rig, Optional<Double> bodyMetres, PointFacts... points) {
        return scene(rig, bodyMetres, Optional.of(target()), points);
    }

    static EnclosureScene scene(Rig rig, Optional<Double> bodyMetres, Optional<Target> target, PointFacts... points) {
        SpeciesNeed need = new SpeciesNeed(1, "Species", target, Optional.empty());
        AnimalFacts animal = new AnimalFacts(1, "2026-1", "Basil", 1, AnimalKind.INDIVIDUAL, Pigment.NORMAL);
        Optional<BodyLengthFacts> length =
                bodyMetres.map(metres -> new BodyLengthFacts(metres, LocalDate.of(2026, 5, 4)));
        return new EnclosureScene(
                new EnclosureFacts(1, "E1", 1, "Room", Optional.of(SIZE), Optional.empty()),
                RigScene.of(rig),
                List.of(points),
                List.of(new Occupant(animal, "Species", Reach.EVERYWHERE, length)),
                List.of(need),
                Optional.of(need));
    }

    static EnclosureScene ofUnknownSize(EnclosureScene scene) {
        EnclosureFacts sized = scene.enclosure();
        EnclosureFacts enclosure = new EnclosureFacts(sized.id(), "E1", 1, "Room", Optional.empty(), Optional.empty());
        return new EnclosureScene(
                enclosure, scene.rig(), scene.points(), scene.occupants(), scene.needs(), scene.shown());
    }

    /** The same with another front. */
    static EnclosureScene behind(FrontKind front, EnclosureScene scene) {
        EnclosureFacts facts = scene.enclosure();
        return new EnclosureScene(
                new EnclosureFacts(
                        facts.id(),
                        facts.code(),
                        facts.roomId(),
                        facts.room(),
                        facts.size(),
                        facts.retiredAt(),
                        Optional.of(front),
                        facts.reach()),
                scene.rig(),
                scene.points(),
                scene.occupants(),
                scene.needs(),
                scene.shown());
    }

    /** The same, where the target asks for so many hours of light a day. */
    static EnclosureScene lit(EnclosureScene scene, double hours) {
        LightHours light = new LightHours(hours, SourceMark.COMMON_PRACTICE, "invented for a test");
        List<SpeciesNeed> needs = scene.needs().stream()
                .map(need -> new SpeciesNeed(
                        need.speciesId(), need.scientificName(), need.target(), need.order(), Optional.of(light)))
                .toList();
        return new EnclosureScene(
                scene.enclosure(), scene.rig(), scene.points(), scene.occupants(), needs, scene.shown());
    }

    private static Target target() {
        return new Target(
                1,
                1,
                1,
                new UvZone(2, LightMethod.SUNBEAM),
                RigExamples.SOME_DAY,
                RigExamples.SOME_DAY,
                List.of(
                        limit(LimitPlace.BASKING, new Band(0.4, 1.5)),
                        limit(LimitPlace.SHADE, Band.atMost(0.1)),
                        limit(LimitPlace.CEILING, Band.atMost(3))));
    }

    private static SourcedLimit limit(LimitPlace place, Band band) {
        return new SourcedLimit(Quantity.UV_INDEX, place, band, SourceMark.COMMON_PRACTICE, "invented for a test");
    }

    static Checks checks(EnclosureScene scene) {
        return checks(scene, NOTHING);
    }

    /** On a rough grain, the light of the zones being the fine one. */
    static Checks roughly(EnclosureScene scene) {
        return TradeChecks.checked(
                new Case(scene, OUTLOOK.of(scene), Grain.ROUGH, RestingLight.of(scene), NOTHING, new Formats()));
    }

    static Checks checks(EnclosureScene scene, Known known) {
        return TradeChecks.checked(
                new Case(scene, OUTLOOK.of(scene), Grain.FINE, RestingLight.of(scene), known, new Formats()));
    }

    /** What comes of one check of a rig under which somebody of 0.2 m lives. */
    static Checked check(TradeCheck check, Rig rig) {
        return checks(scene(rig, Optional.of(0.2))).of(check);
    }
}
