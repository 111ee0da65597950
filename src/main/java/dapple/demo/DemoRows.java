package dapple.demo;

import dapple.enclosure.Facing;
import dapple.enclosure.InnerSize;
import dapple.enclosure.NewPoint;
import dapple.enclosure.Position;
import dapple.light.judging.PointRole;
import dapple.site.ReferenceTable;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Optional;

/** The invented collection, from the tables of {@code demo}. */
record DemoRows(List<Kind> species, List<Space> enclosures, List<Spot> points) {

    static DemoRows read() {
        return new DemoRows(
                ReferenceTable.rows("demo/species.csv", Kind::of),
                ReferenceTable.rows("demo/enclosures.csv", Space::of),
                ReferenceTable.rows("demo/points.csv", Spot::of));
    }

    List<Spot> pointsOf(Space space) {
        return points.stream()
                .filter(spot -> spot.enclosure().equals(space.code()))
                .toList();
    }

    /** A species, with the zone that the site has approved for it, if it has. */
    record Kind(String scientificName, String commonName, Optional<UvZone> zone) {
        static Kind of(NamedCsvRecord row) {
            Optional<UvZone> zone = Optional.of(row.getField("zone"))
                    .filter(number -> !number.isEmpty())
                    .map(number -> new UvZone(Integer.parseInt(number), LightMethod.valueOf(row.getField("method"))));
            return new Kind(row.getField("scientific_name"), row.getField("common_name"), zone);
        }
    }

    /** An enclosure with its one animal, and how long ago it was last read. */
    record Space(
            String room,
            String code,
            Optional<InnerSize> size,
            String scientificName,
            String accessionNumber,
            String animal,
            int lastReadDaysAgo,
            boolean plannedOff) {
        /** The digits of its code. */
        int codeNumber() {
            return Integer.parseInt(code.substring(1));
        }

        static Space of(NamedCsvRecord row) {
            Optional<InnerSize> size = Optional.of(row.getField("width_metres"))
                    .filter(width -> !width.isEmpty())
                    .map(width -> new InnerSize(
                            number(row, "width_metres"), number(row, "depth_metres"), number(row, "height_metres")));
            return new Space(
                    row.getField("room"),
                    row.getField("code"),
                    size,
                    row.getField("scientific_name"),
                    row.getField("accession_number"),
                    row.getField("animal"),
                    Integer.parseInt(row.getField("last_read_days_ago")),
                    row.getField("planned_off").equals("yes"));
        }
    }

    /** A measuring point and the UV index of its first and last weekly reading. */
    record Spot(String enclosure, NewPoint point, double firstUvi, double lastUvi) {
        static Spot of(NamedCsvRecord row) {
            Optional<Position> position = Optional.of(row.getField("x_metres"))
                    .filter(x -> !x.isEmpty())
                    .map(x -> new Position(number(row, "x_metres"), number(row, "y_metres"), number(row, "z_metres")));
            NewPoint point = new NewPoint(
                    row.getField("code"),
                    row.getField("place"),
                    PointRole.valueOf(row.getField("role")),
                    Facing.valueOf(row.getField("facing")),
                    position);
            return new Spot(row.getField("enclosure"), point, number(row, "first_uvi"), number(row, "last_uvi"));
        }
    }

    private static double number(NamedCsvRecord row, String field) {
        return Double.parseDouble(row.getField(field));
    }
}
