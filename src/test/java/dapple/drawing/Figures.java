package dapple.drawing;

import dapple.drawing.Drawing.Words;
import dapple.drawing.EnclosureFigure.Known;
import dapple.drawing.EnclosureFigure.Lamp;
import dapple.drawing.EnclosureFigure.Lid;
import dapple.drawing.EnclosureFigure.Point;
import dapple.drawing.FieldMap.Limit;
import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Scene;
import dapple.light.field.SourcePlaces;
import dapple.light.geometry.Box;
import dapple.light.geometry.Capsule;
import dapple.light.geometry.Solid;
import dapple.light.geometry.UprightCylinder;
import dapple.light.geometry.Vec;
import dapple.light.judging.State;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Output;
import dapple.light.source.Source;
import dapple.light.zone.RestingSurface;
import dapple.light.zone.ZoneTarget;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Enclosures that can be drawn; all that stands in them is invented. */
final class Figures {
    static final ZoneTarget TARGET = new ZoneTarget(new Interval(2, 3.5), 0.3, 5);
    private static final Vec INSIDE = new Vec(1.5, 0.6, 0.7);
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Vec ALONG = new Vec(1, 0, 0);
    private static final double STEP_METRES = 0.01;

    private static final Source TUBE = new Source.Cylinder(0.85, ALONG, 0.008);
    private static final Source SPOT = new Source.Face(Beam.Power.ofBeamAngle(40), 0.05);
    private static final Vec TUBE_PLACE = new Vec(0.53, 0.3, 0.76);
    private static final Vec SPOT_PLACE = new Vec(0.46, 0.3, 0.8);

    static final List<Solid> FURNITURE = List.of(
            Box.of(new Vec(0.3, 0.1, 0), new Vec(0.66, 0.5, 0.14), 0),
            Box.of(new Vec(0.34, 0.14, 0.14), new Vec(0.6, 0.46, 0.22), 0),
            Box.of(new Vec(1.0, 0.15, 0.24), new Vec(1.42, 0.55, 0.265), 0),
            Box.of(new Vec(1.02, 0.15, 0), new Vec(1.05, 0.55, 0.24), 0),
            Box.of(new Vec(1.37, 0.15, 0), new Vec(1.4, 0.55, 0.24), 0),
            UprightCylinder.of(new Vec(0.87, 0.3, 0), 0.1, 0.04),
            Capsule.of(new Vec(0.1, 0.45, 0.1), new Vec(0.9, 0.5, 0.4), 0.02));

    private Figures() {}

    static Point point(String name, Vec place, String amount, State state) {
        return new Point(name, place, Known.MEASURED, amount, Optional.of(state));
    }

    static List<Point> points() {
        return List.of(
                point("P1", new Vec(0.46, 0.3, 0.28), "1.7", State.TOO_WEAK),
                point("P2", new Vec(0.78, 0.3, 0.08), "0.6", State.ON_TARGET),
                point("P3", new Vec(1.2, 0.3, 0.08), "0.0", State.ON_TARGET),
                new Point("P4", new Vec(0.46, 0.3, 0.34), Known.PREDICTED, "2.2", Optional.of(State.BORDERLINE)),
                new Point("P5", new Vec(1.3, 0.3, 0.3), Known.UNKNOWN, "not known", Optional.empty()));
    }

    static EnclosureFigure dryRoom(List<Point> points) {
        return new EnclosureFigure(
                INSIDE,
                List.of(new Lid(0.7, Filter.Rectangle.between(0, 0, 1.5, 0.6))),
                List.of(new Lamp("L-104 tube", TUBE_PLACE, DOWN, TUBE), new Lamp("L-088 spot", SPOT_PLACE, DOWN, SPOT)),
                FURNITURE,
                List.of(new RestingSurface(
                        new Vec(0.5, 0.3, 0.22), Vec.UP, Filter.Rectangle.between(0.34, 0.14, 0.6, 0.46))),
                points);
    }

    static LightFigure light(CutPlane plane) {
        Output tube = new Output.Reading(Quantity.UV_INDEX, 1.6, new Vec(0.53, 0.3, 0.46), Vec.UP, 1);
        Output spot = new Output.Reading(Quantity.UV_INDEX, 3, new Vec(0.46, 0.3, 0.5), Vec.UP, 1);
        Scene scene = new Scene(
                0.01,
                List.of(
                        new dapple.light.source.Lamp("tube", TUBE_PLACE, DOWN, TUBE, List.of(tube)),
                        new dapple.light.source.Lamp("spot", SPOT_PLACE, DOWN, SPOT, List.of(spot))),
                List.of(),
                FURNITURE);
        Field field = Field.of(scene);
        LitPlane.Grid grid = LitPlane.Grid.over(new Place(0, 0), plane.on(INSIDE), STEP_METRES);
        LitPlane lit = LitPlane.of(grid, place -> {
            double[] amounts = {Double.NaN};
            Vec at = plane.in(place);
            if (SourcePlaces.isOpen(scene, at)) {
                field.amounts(at, new Facing.Maximum(), amounts);
            }
            return amounts[0];
        });
        Map<Limit, String> labels =
                Map.of(Limit.SHADE, "0.3", Limit.LOW, "2.0", Limit.HIGH, "3.5", Limit.CEILING, "5.0 ceiling");
        return new LightFigure(lit, TARGET, labels);
    }

    static Drawing section() {
        Section section = new Section(0.3);
        return Drawing.of(
                dryRoom(points()),
                section,
                Optional.of(light(section)),
                new Words(
                        "Section at 0.30 m depth, UV index",
                        "The basking place P1 lies below the line of 2.0. Shade under the shelf and at the right."));
    }

    static Drawing plan() {
        Plan plan = new Plan(0.24);
        return Drawing.of(
                dryRoom(points()),
                plan,
                Optional.of(light(plan)),
                new Words("Plan at 0.24 m height, UV index", "No place over the ceiling at this height."));
    }
}
