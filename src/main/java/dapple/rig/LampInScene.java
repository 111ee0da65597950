package dapple.rig;

import dapple.lamp.DimmedTungsten;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.lamp.ShapeSource;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import dapple.rig.LeftOut.Why;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A fitting as the engine sees it.
 *
 * @param outputs by quantity
 */
record LampInScene(LampFacts lamp, Mount mount, Source source, Map<Quantity, LampOutput> outputs) {
    /** The fitting, or why the engine cannot see it. */
    sealed interface Found {
        record Seen(LampInScene lamp) implements Found {}

        record Unseen(LeftOut leftOut) implements Found {}
    }

    static Found find(FittingFacts fitting, List<Solid> solids) {
        LampFacts lamp = fitting.lamp();
        Optional<Mount> mount = fitting.hanging().mount();
        Optional<LampShape> shape = lamp.model().shape();
        if (mount.isEmpty()) {
            return unseen(lamp, Why.LAMP_WITHOUT_POSITION);
        }
        if (shape.isEmpty()) {
            return unseen(lamp, Why.LAMP_WITHOUT_SHAPE);
        }
        if (lamp.outputs().isEmpty()) {
            return unseen(lamp, Why.LAMP_WITHOUT_OUTPUT);
        }
        if (isDimmedSomehow(fitting)) {
            return unseen(lamp, Why.LAMP_DIMMED);
        }
        return ShapeSource.of(shape.get(), mount.get().along())
                .map(source -> checked(fitting, mount.get(), source, solids))
                .orElseGet(() -> unseen(lamp, Why.LAMP_WITHOUT_DIRECTION));
    }

    private static Found unseen(LampFacts lamp, Why why) {
        return new Found.Unseen(new LeftOut(lamp.tag(), why));
    }

    /** What a dimmer leaves is known of tungsten alone, where its voltage is. */
    private static boolean isDimmedSomehow(FittingFacts fitting) {
        Gear gear = fitting.hanging().gear();
        boolean isTungsten = fitting.lamp().model().lampClass() == LampClass.TUNGSTEN_HALOGEN;
        return gear.isDimmed() && !(isTungsten && gear.voltageRatio().isPresent());
    }

    private static Found checked(FittingFacts fitting, Mount mount, Source source, List<Solid> solids) {
        LampFacts lamp = fitting.lamp();
        Optional<DimmedTungsten> dimmed =
                fitting.hanging().gear().voltageRatio().map(DimmedTungsten::new);
        Map<Quantity, LampOutput> outputs = lamp.outputs().stream()
                .filter(output -> RigScene.LIGHT.contains(output.quantity()))
                .map(output -> dimmed.map(left -> left.of(output)).orElse(output))
                .collect(Collectors.toMap(LampOutput::quantity, output -> output));
        LampInScene seen = new LampInScene(lamp, mount, source, outputs);
        if (seen.isReadInside()) {
            return unseen(lamp, Why.LAMP_READ_INSIDE);
        }
        return seen.isInside(solids) ? unseen(lamp, Why.LAMP_IN_FURNITURE) : new Found.Seen(seen);
    }

    private boolean isReadInside() {
        return source instanceof Source.Cylinder cylinder
                && outputs.values().stream().anyMatch(output -> !(output.distanceMetres() > cylinder.radius()));
    }

    private boolean isInside(List<Solid> solids) {
        Vec half = along().times(length() / 2);
        Vec one = mount.centre().minus(half);
        Vec other = mount.centre().plus(half);
        return solids.stream().anyMatch(solid -> solid.holds(mount.centre()) || solid.blocks(one, other));
    }

    private Vec along() {
        return mount.along().orElse(Vec.UP);
    }

    private double length() {
        if (source instanceof Source.Line line) {
            return line.length();
        }
        if (source instanceof Source.Cylinder cylinder) {
            return cylinder.length();
        }
        return source instanceof Source.Rectangle panel ? panel.length() : 0;
    }

    /** How near a place is to the middle line of what emits, m. */
    double distance(Vec place) {
        Vec way = place.minus(mount.centre());
        double half = length() / 2;
        double within = Math.max(-half, Math.min(half, way.dot(along())));
        return way.minus(along().times(within)).length();
    }

    /** The lamp with what it gives of some quantities. */
    Lamp lamp(Set<Quantity> wanted) {
        List<Output> readings = outputs.values().stream()
                .filter(output -> wanted.contains(output.quantity()))
                .sorted(Comparator.comparing(LampOutput::quantity))
                .map(this::reading)
                .toList();
        return new Lamp(lamp.tag(), mount.centre(), mount.aim(), source, readings);
    }

    private Output reading(LampOutput output) {
        Vec at = mount.centre().plus(mount.aim().times(output.distanceMetres()));
        return new Output.Reading(
                output.quantity(), output.reading(), at, mount.aim().times(-1), 1);
    }
}
