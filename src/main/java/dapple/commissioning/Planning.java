package dapple.commissioning;

import dapple.commissioning.PlannedPoint.Share;
import dapple.commissioning.Untold.Place;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.calibration.FittedRig;
import dapple.light.calibration.FittedRig.Factor;
import dapple.light.calibration.RigCalibration;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.Outlook;
import dapple.prediction.Predicted;
import dapple.rig.FittingFacts;
import dapple.rig.RigChangeFacts;
import dapple.rig.RigScene;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;

/** Says which points tell something of a rig, and where else a reading would tell its lamps apart. */
@Component
class Planning {
    /** A lamp that gives less of the light of a point is not told by it (ours). */
    private static final double LEAST_SHARE = 0.1;

    /** Where a place is looked for it must have so much of the most (ours). */
    private static final double LEAST_LIGHT = 0.1;

    /** Places looked at along each side. */
    private static final int ACROSS = 7;

    private static final int DEEP = 3;
    private static final int HIGH = 4;

    /** Step of the display of a usual meter: UV index, and other quantities. */
    private static final double TENTH = 0.1;

    private final Outlook outlook;

    Planning(Outlook outlook) {
        this.outlook = outlook;
    }

    /** The points whose light can be predicted, those that tell of the change first. */
    List<PlannedPoint> points(EnclosureScene scene, RigChangeFacts change, List<Taken> taken) {
        Set<String> changed = changed(scene, change);
        Field field = Field.of(scene.rig().scene());
        return scene.points().stream()
                .flatMap(point -> scene
                        .rig()
                        .receiver(point)
                        .map(sensor -> point(scene, point, shares(scene, point, field.at(sensor)), changed, taken))
                        .stream())
                .sorted(Comparator.comparing((PlannedPoint planned) -> !planned.isWanted()))
                .toList();
    }

    private PlannedPoint point(
            EnclosureScene scene, PointFacts point, List<Share> shares, Set<String> changed, List<Taken> taken) {
        boolean isWanted =
                shares.stream().anyMatch(share -> changed.contains(share.lamp()) && share.share() >= LEAST_SHARE);
        return new PlannedPoint(
                point,
                predicted(scene, point),
                shares,
                isWanted,
                taken.stream().filter(one -> one.point().id() == point.id()).toList());
    }

    private Map<Quantity, Predicted> predicted(EnclosureScene scene, PointFacts point) {
        Map<Quantity, Predicted> predicted = new EnumMap<>(Quantity.class);
        for (Quantity quantity : point.quantities()) {
            outlook.withoutZones(scene, Quantity.UV_INDEX)
                    .at(point, quantity)
                    .ifPresent(light -> predicted.put(quantity, light));
        }
        return predicted;
    }

    /** The lamps that the change brought or moved; all of them where it did so with none. */
    private static Set<String> changed(EnclosureScene scene, RigChangeFacts change) {
        List<FittingFacts> fittings = scene.rig().rig().fittings();
        Set<String> begun = fittings.stream()
                .filter(fitting -> fitting.span().begunBy() == change.id())
                .map(fitting -> fitting.lamp().tag())
                .collect(Collectors.toSet());
        return begun.isEmpty()
                ? fittings.stream().map(fitting -> fitting.lamp().tag()).collect(Collectors.toSet())
                : begun;
    }

    private static List<Share> shares(EnclosureScene scene, PointFacts point, Light light) {
        return point.quantities().stream()
                .filter(scene.rig().quantities()::contains)
                .findFirst()
                .map(quantity -> shares(scene.rig(), quantity, light))
                .orElse(List.of());
    }

    private static List<Share> shares(RigScene rig, Quantity quantity, Light light) {
        double whole = light.values().getOrDefault(quantity, 0.0);
        return IntStream.range(0, light.byLamp().size())
                .mapToObj(lamp -> new Share(
                        rig.scene().lamps().get(lamp).id(),
                        whole > 0 ? light.byLamp().get(lamp).getOrDefault(quantity, 0.0) / whole : 0))
                .filter(share -> share.share() > 0)
                .sorted(Comparator.comparingDouble(Share::share).reversed())
                .toList();
    }

    /** The lamps that readings at all points leave open. */
    List<Untold> untold(EnclosureScene scene) {
        return scene.points().stream()
                .flatMap(point -> point.quantities().stream())
                .distinct()
                .filter(scene.rig().quantities()::contains)
                .sorted()
                .flatMap(quantity -> untold(scene, quantity).stream())
                .toList();
    }

    private static List<Untold> untold(EnclosureScene scene, Quantity quantity) {
        StatedRig stated = new StatedRig(scene.rig(), quantity);
        return stated.ifAllWereRead(scene.points(), MeterUncertainty.of(quantity, TENTH))
                .map(RigCalibration::of)
                .filter(FittedRig.class::isInstance)
                .map(FittedRig.class::cast)
                .map(fitted -> fitted.lamps().stream()
                        .filter(lamp -> !lamp.isTold())
                        .map(lamp -> new Untold(quantity, lamp.name(), place(scene, quantity, lamp)))
                        .toList())
                .orElseGet(() -> stated.lamps().stream()
                        .map(lamp -> new Untold(quantity, lamp.name(), Optional.empty()))
                        .toList());
    }

    /** Where a lamp gives the largest share of light that is worth reading. */
    private static Optional<Place> place(EnclosureScene scene, Quantity quantity, Factor lamp) {
        Field field = Field.of(scene.rig().scene());
        List<Vec> places = scene.size().map(Planning::places).orElse(List.of()).stream()
                .filter(scene.rig()::isOpen)
                .toList();
        List<Light> lights = places.stream()
                .map(place -> field.at(new Receiver(place, new Facing.Maximum())))
                .toList();
        double most = lights.stream()
                .mapToDouble(light -> light.values().getOrDefault(quantity, 0.0))
                .max()
                .orElse(0);
        return IntStream.range(0, places.size())
                .filter(index -> lights.get(index).values().getOrDefault(quantity, 0.0) >= LEAST_LIGHT * most)
                .mapToObj(index -> new Place(places.get(index), share(scene.rig(), quantity, lights.get(index), lamp)))
                .filter(place -> place.share() > 0)
                .max(Comparator.comparingDouble(Place::share));
    }

    private static double share(RigScene rig, Quantity quantity, Light light, Factor lamp) {
        return shares(rig, quantity, light).stream()
                .filter(share -> share.lamp().equals(lamp.name()))
                .mapToDouble(Share::share)
                .sum();
    }

    /** In the middles of equal boxes. */
    private static List<Vec> places(InnerSize size) {
        List<Vec> places = new ArrayList<>();
        for (int number = 0; number < ACROSS * DEEP * HIGH; number++) {
            places.add(new Vec(
                    (number % ACROSS + 0.5) / ACROSS * size.widthMetres(),
                    (Math.floorDiv(number, ACROSS) % DEEP + 0.5) / DEEP * size.depthMetres(),
                    (Math.floorDiv(number, ACROSS * DEEP) + 0.5) / HIGH * size.heightMetres()));
        }
        return places;
    }
}
