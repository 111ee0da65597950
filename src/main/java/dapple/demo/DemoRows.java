package dapple.demo;

import dapple.animal.Pigment;
import dapple.enclosure.Facing;
import dapple.enclosure.FrontKind;
import dapple.enclosure.InnerSize;
import dapple.enclosure.NewPoint;
import dapple.enclosure.Position;
import dapple.enclosure.ReachKind;
import dapple.enclosure.StatedReach;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.site.ReferenceTable;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Optional;

/** The invented collection, from the tables of {@code demo}. */
record DemoRows(
        List<Kind> species,
        List<Space> enclosures,
        List<Tenant> animals,
        List<Spot> points,
        List<Further> further,
        List<Instead> instead) {

    static DemoRows read() {
        return new DemoRows(
                ReferenceTable.rows("demo/species.csv", Kind::of),
                ReferenceTable.rows("demo/enclosures.csv", Space::of),
                ReferenceTable.rows("demo/animals.csv", Tenant::of),
                ReferenceTable.rows("demo/points.csv", Spot::of),
                ReferenceTable.rows("demo/further-readings.csv", Further::of),
                ReferenceTable.rows("demo/other-meter.csv", Instead::of));
    }

    List<Spot> pointsOf(Space space) {
        return points.stream()
                .filter(spot -> spot.enclosure().equals(space.code()))
                .toList();
    }

    List<Tenant> tenantsOf(Space space) {
        return animals.stream()
                .filter(tenant -> tenant.enclosure().equals(space.code()))
                .toList();
    }

    List<Further> furtherAt(Spot spot) {
        return further.stream()
                .filter(one ->
                        one.enclosure().equals(spot.enclosure()) && one.point().equals(spot.code()))
                .toList();
    }

    /** By which other meter an enclosure was read in a week. */
    Optional<Instead> insteadAt(Space space, int week) {
        return instead.stream()
                .filter(one -> one.enclosure().equals(space.code()) && one.week() == week)
                .findFirst();
    }

    /**
     * A species, with the zone that the site has approved for it, if it has.
     *
     * @param formerName by which it was entered, where it is called otherwise now
     */
    record Kind(
            String scientificName,
            String commonName,
            Optional<UvZone> zone,
            Optional<Double> homeLatitudeDegrees,
            Optional<String> formerName) {
        static Kind of(NamedCsvRecord row) {
            Optional<UvZone> zone = given(row, "zone")
                    .map(number -> new UvZone(Integer.parseInt(number), LightMethod.valueOf(row.getField("method"))));
            return new Kind(
                    row.getField("scientific_name"),
                    row.getField("common_name"),
                    zone,
                    given(row, "home_latitude").map(Double::valueOf),
                    given(row, "former_name"));
        }
    }

    /**
     * An enclosure, and how long ago it was last read.
     *
     * @param changedDaysAgo when its rig was changed, at which its readings jump; none: they drift
     */
    record Space(
            String room,
            String code,
            Optional<InnerSize> size,
            int lastReadDaysAgo,
            Optional<Integer> changedDaysAgo,
            boolean plannedOff,
            Optional<FrontKind> front,
            Optional<StatedReach> reach) {
        private static final int FIRST_GENERATED = 17;

        /** Whether a table tells what its last readings come to; those of the others come from the light engine alone. */
        boolean isTold() {
            return codeNumber() < FIRST_GENERATED;
        }

        /** The digits of its code. */
        int codeNumber() {
            return Integer.parseInt(code.substring(1));
        }

        static Space of(NamedCsvRecord row) {
            Optional<InnerSize> size = given(row, "width_metres")
                    .map(width -> new InnerSize(
                            number(row, "width_metres"), number(row, "depth_metres"), number(row, "height_metres")));
            return new Space(
                    row.getField("room"),
                    row.getField("code"),
                    size,
                    Integer.parseInt(row.getField("last_read_days_ago")),
                    given(row, "changed_days_ago").map(Integer::valueOf),
                    row.getField("planned_off").equals("yes"),
                    given(row, "front").map(FrontKind::valueOf),
                    given(row, "reach")
                            .map(ReachKind::valueOf)
                            .map(kind -> new StatedReach(
                                    kind, given(row, "reach_metres").map(Double::valueOf))));
        }
    }

    /**
     * Who lives in an enclosure.
     *
     * @param number of a group that is kept as a count; none: one animal
     * @param lengthMetres of the body, of the largest where they are several
     */
    record Tenant(
            String enclosure,
            String scientificName,
            String accessionNumber,
            String name,
            Optional<Integer> number,
            Pigment pigment,
            double lengthMetres,
            Optional<Double> reachMetres) {
        static Tenant of(NamedCsvRecord row) {
            return new Tenant(
                    row.getField("enclosure"),
                    row.getField("scientific_name"),
                    row.getField("accession_number"),
                    row.getField("name"),
                    given(row, "number").map(Integer::valueOf),
                    Pigment.valueOf(row.getField("pigment")),
                    DemoRows.number(row, "length_metres"),
                    given(row, "reach_metres").map(Double::valueOf));
        }
    }

    /** What is read at a point besides the UV index, with which meter, first and last. */
    record Further(String enclosure, String point, String meter, double first, double last) {
        static Further of(NamedCsvRecord row) {
            return new Further(
                    row.getField("enclosure"),
                    row.getField("point"),
                    row.getField("meter"),
                    number(row, "first"),
                    number(row, "last"));
        }
    }

    /**
     * A week in which an enclosure was read by another meter than usual.
     *
     * @param times what it shows over what it should: below 1 since it fell, of which nobody made a note
     */
    record Instead(String enclosure, int week, String meter, double times) {
        static Instead of(NamedCsvRecord row) {
            return new Instead(
                    row.getField("enclosure"),
                    Integer.parseInt(row.getField("week")),
                    row.getField("meter"),
                    number(row, "shows_times"));
        }
    }

    /**
     * A measuring point and the UV index that the table tells of it.
     *
     * @param serves the one species that it serves; none: all that live there
     * @param firstUvi where its told weeks begin; none: as the light engine says
     * @param lastUvi where they end
     */
    record Spot(
            String enclosure,
            String code,
            String place,
            PointRole role,
            Facing facing,
            Optional<Position> position,
            Optional<String> serves,
            Optional<Double> firstUvi,
            Optional<Double> lastUvi) {
        NewPoint asking(List<Quantity> quantities) {
            return new NewPoint(code, place, role, facing, position, quantities);
        }

        static Spot of(NamedCsvRecord row) {
            Optional<Position> position = given(row, "x_metres")
                    .map(x -> new Position(number(row, "x_metres"), number(row, "y_metres"), number(row, "z_metres")));
            return new Spot(
                    row.getField("enclosure"),
                    row.getField("code"),
                    row.getField("place"),
                    PointRole.valueOf(row.getField("role")),
                    Facing.valueOf(row.getField("facing")),
                    position,
                    given(row, "serves"),
                    given(row, "first_uvi").map(Double::valueOf),
                    given(row, "last_uvi").map(Double::valueOf));
        }
    }

    /** What a cell says; none if it is empty. */
    static Optional<String> given(NamedCsvRecord row, String field) {
        return Optional.of(row.getField(field)).filter(text -> !text.isEmpty());
    }

    static double number(NamedCsvRecord row, String field) {
        return Double.parseDouble(row.getField(field));
    }
}
