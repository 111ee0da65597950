package dapple.demo;

import static dapple.demo.DemoRows.given;
import static dapple.demo.DemoRows.number;

import dapple.lamp.LampClass;
import dapple.lamp.LampModelChange;
import dapple.lamp.LampShape;
import dapple.light.geometry.Vec;
import dapple.rig.Cover;
import dapple.rig.CoverMaterial;
import dapple.rig.Furniture;
import dapple.rig.FurnitureShape;
import dapple.rig.Gear;
import dapple.rig.LampTimer;
import dapple.rig.Mount;
import dapple.rig.Provenance;
import dapple.site.ReferenceTable;
import dapple.site.SourceMark;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The invented lamps and rigs, from the tables of {@code demo}. */
record DemoRigRows(List<Model> models, List<Bulb> lamps, List<Hung> fittings, List<Lid> covers, List<Piece> furniture) {
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Map<String, Vec> ALONG = Map.of("x", new Vec(1, 0, 0), "y", new Vec(0, 1, 0));
    private static final Provenance MEASURED = new Provenance(SourceMark.MEASURED, "calliper, three wires");
    private static final double METRES_PER_MILLIMETRE = 0.001;

    static DemoRigRows read() {
        return new DemoRigRows(
                ReferenceTable.rows("demo/lamp-models.csv", Model::of),
                ReferenceTable.rows("demo/lamps.csv", Bulb::of),
                ReferenceTable.rows("demo/fittings.csv", Hung::of),
                ReferenceTable.rows("demo/covers.csv", Lid::of),
                ReferenceTable.rows("demo/furniture.csv", Piece::of));
    }

    /** A lamp model and what it gives 30 cm away. */
    record Model(LampModelChange change, Optional<Double> uvIndex, Optional<Double> lux) {
        static Model of(NamedCsvRecord row) {
            LampModelChange change = new LampModelChange(
                    row.getField("name"),
                    LampClass.valueOf(row.getField("lamp_class")),
                    Optional.of(number(row, "watts")),
                    Optional.of(shape(row)));
            return new Model(change, amount(row, "uvi_at_30_cm"), amount(row, "lux_at_30_cm"));
        }

        private static LampShape shape(NamedCsvRecord row) {
            return switch (row.getField("shape")) {
                case "LINE" ->
                    new LampShape.Line(number(row, "length_metres"), amount(row, "lobe"), number(row, "spill"));
                case "CYLINDER" -> new LampShape.Cylinder(number(row, "length_metres"), number(row, "radius_metres"));
                case "PANEL" -> new LampShape.Panel(number(row, "length_metres"), number(row, "radius_metres"));
                case "SPOT" -> new LampShape.Spot(number(row, "beam_degrees"), amount(row, "radius_metres"));
                default -> throw new IllegalArgumentException("no shape of a lamp: " + row.getField("shape"));
            };
        }
    }

    private static Optional<Double> amount(NamedCsvRecord row, String field) {
        return given(row, field).map(Double::valueOf);
    }

    /** A lamp, and how long it has burnt when its enclosure's table ends. */
    record Bulb(String tag, String model, double burnHours, String storePlace) {
        static Bulb of(NamedCsvRecord row) {
            return new Bulb(
                    row.getField("tag"), row.getField("model"), number(row, "burn_hours"), row.getField("store_place"));
        }
    }

    /** A lamp where it hangs. */
    record Hung(String enclosure, String tag, String place, Mount mount, LampTimer timer, String circuit, Gear gear) {
        static Hung of(NamedCsvRecord row) {
            Mount mount = new Mount(
                    new Vec(number(row, "x_metres"), number(row, "y_metres"), number(row, "z_metres")),
                    DOWN,
                    Optional.ofNullable(ALONG.get(row.getField("along"))));
            return new Hung(
                    row.getField("enclosure"),
                    row.getField("lamp"),
                    row.getField("place"),
                    mount,
                    DemoTimers.timer(row),
                    row.getField("circuit"),
                    DemoTimers.gear(row));
        }
    }

    /** A mesh that covers an enclosure. */
    record Lid(String enclosure, Cover cover) {
        static Lid of(NamedCsvRecord row) {
            return new Lid(
                    row.getField("enclosure"),
                    mesh(
                            row.getField("name"),
                            number(row, "height_metres"),
                            number(row, "wire_millimetres"),
                            number(row, "pitch_millimetres")));
        }

        static Cover mesh(String name, double heightMetres, double wireMillimetres, double pitchMillimetres) {
            CoverMaterial weave = new CoverMaterial.Weave(
                    wireMillimetres * METRES_PER_MILLIMETRE, pitchMillimetres * METRES_PER_MILLIMETRE, MEASURED);
            return new Cover(name, Optional.of(heightMetres), Optional.empty(), weave, 1);
        }
    }

    /** A piece of furniture. */
    record Piece(String enclosure, Furniture furniture) {
        static Piece of(NamedCsvRecord row) {
            boolean restedOn = row.getField("rested_on").equals("yes");
            return new Piece(row.getField("enclosure"), new Furniture(row.getField("name"), shape(row), restedOn));
        }

        private static FurnitureShape shape(NamedCsvRecord row) {
            Vec one = new Vec(number(row, "x1_metres"), number(row, "y1_metres"), number(row, "z1_metres"));
            return switch (row.getField("kind")) {
                case "BOX" -> new FurnitureShape.Block(one, other(row), 0);
                case "CAPSULE" -> new FurnitureShape.Branch(one, other(row), number(row, "radius_metres"));
                case "CYLINDER" -> new FurnitureShape.Post(one, number(row, "z2_metres"), number(row, "radius_metres"));
                default -> throw new IllegalArgumentException("no shape of furniture: " + row.getField("kind"));
            };
        }

        private static Vec other(NamedCsvRecord row) {
            return new Vec(number(row, "x2_metres"), number(row, "y2_metres"), number(row, "z2_metres"));
        }
    }
}
