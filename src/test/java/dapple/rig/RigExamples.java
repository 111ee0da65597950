package dapple.rig;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.lamp.SpectrumEvidence;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Parts of rigs to try things with; invented. */
public final class RigExamples {
    public static final Instant SOME_DAY = Instant.parse("2026-05-04T09:00:00Z");
    public static final Vec DOWN = new Vec(0, 0, -1);
    public static final Vec RIGHT = new Vec(1, 0, 0);

    private static final Provenance MEASURED = new Provenance(SourceMark.MEASURED, "with and without, one meter");

    private RigExamples() {}

    public static Mount above(double x, double y, double z) {
        return new Mount(new Vec(x, y, z), DOWN, Optional.of(RIGHT));
    }

    public static Hanging hanging(String place) {
        return new Hanging(place, Optional.of(above(0.6, 0.3, 0.9)), Optional.of(tenHours()), Optional.empty());
    }

    public static DailyTimer tenHours() {
        return new DailyTimer(LocalTime.of(8, 0), LocalTime.of(18, 0));
    }

    /** Gives a UV index of 4 and 10,000 lx at 0.3 m. */
    public static LampFacts spot(String tag) {
        return lamp(tag, LampClass.METAL_HALIDE, Optional.of(new LampShape.Spot(40, Optional.empty())));
    }

    public static LampFacts lamp(String tag, LampClass lampClass, Optional<LampShape> shape) {
        return lamp(tag, lampClass, shape, List.of(output(Quantity.UV_INDEX, 4), output(Quantity.ILLUMINANCE, 10_000)));
    }

    public static LampFacts lamp(String tag, LampClass lampClass, Optional<LampShape> shape, List<LampOutput> outputs) {
        LampModelFacts model = new LampModelFacts(
                1, "Model", lampClass, Optional.of(50.0), shape, outputs, new SpectrumEvidence.Missing());
        return new LampFacts(
                tag.hashCode(), tag, model, Optional.of(0.0), Optional.empty(), List.of(), Optional.empty());
    }

    public static LampOutput output(Quantity quantity, double reading) {
        return new LampOutput(quantity, reading, 0.3, 0.1, SourceMark.FROM_MEMORY, "invented for a test");
    }

    public static FittingFacts fitting(LampFacts lamp, Optional<Mount> mount) {
        Hanging hanging = new Hanging("basking spot", mount, Optional.empty(), Optional.empty());
        return new FittingFacts(lamp.id(), 1, lamp, hanging, Optional.empty(), Span.thought(SOME_DAY));
    }

    public static Rig rig(FittingFacts... fittings) {
        return Rig.empty(1).withFittings(List.of(fittings));
    }

    /** Wires of 0.25 mm every 2.5 mm. */
    public static Cover mesh(Optional<Double> heightMetres) {
        return new Cover(
                "lid mesh", heightMetres, Optional.empty(), new CoverMaterial.Weave(0.000_25, 0.002_5, MEASURED), 1);
    }

    /** Lets a share of the UV index through; of anything else it says nothing. */
    public static Cover sheet(double share) {
        return new Cover(
                "front glass",
                Optional.of(0.8),
                Optional.empty(),
                new CoverMaterial.Passing(false, Map.of(Quantity.UV_INDEX, new CoverTransmittance(share, MEASURED))),
                1);
    }

    public static Rig covered(Rig rig, Cover cover) {
        return rig.withCovers(List.of(new CoverFacts(1, 1, cover, Span.thought(SOME_DAY))));
    }

    public static Rig furnished(Rig rig, FurnitureShape shape) {
        Furniture item = new Furniture("slab", shape, true);
        return rig.withFurniture(List.of(new FurnitureFacts(1, 1, item, Span.thought(SOME_DAY))));
    }
}
