package dapple.desk;

import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.prediction.EnclosureScene;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Measuring points that the form of a desk tries elsewhere; nothing of it is stored.
 *
 * @param points of the enclosure, where the form has them
 * @param rows of the points that have a place, as typed
 * @param wrong names of the fields that are no place; such a point stays where it is
 */
public record PointsTried(List<PointFacts> points, List<Row> rows, List<String> wrong) {
    /** From −9.99 to 99.99 m, in whole centimetres. */
    private static final Pattern METRES = Pattern.compile("-?[0-9](\\.[0-9]{1,2})?|[0-9]{2}(\\.[0-9]{1,2})?");

    private static final List<String> AXES = List.of("xMetres", "yMetres", "zMetres");

    public PointsTried {
        points = List.copyOf(points);
        rows = List.copyOf(rows);
        wrong = List.copyOf(wrong);
    }

    static PointsTried of(DeskForm form, EnclosureScene scene) {
        List<PointFacts> points = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (PointFacts point : scene.points()) {
            Optional<Row> row = point.position().map(place -> row(form, "points[" + points.size() + "]", place));
            row.ifPresent(rows::add);
            row.ifPresent(typed ->
                    AXES.stream().filter(axis -> !isMetres(typed, axis)).forEach(axis -> wrong.add(typed.name(axis))));
            points.add(row.filter(typed -> AXES.stream().allMatch(axis -> isMetres(typed, axis)))
                    .map(typed -> point.tried(
                            new Position(metres(typed, "xMetres"), metres(typed, "yMetres"), metres(typed, "zMetres"))))
                    .orElse(point));
        }
        return new PointsTried(points, rows, wrong);
    }

    private static Row row(DeskForm form, String path, Position place) {
        Map<String, String> typed = new LinkedHashMap<>();
        double[] metres = {place.xMetres(), place.yMetres(), place.zMetres()};
        for (int axis = 0; axis < metres.length; axis++) {
            String field = AXES.get(axis);
            typed.put(
                    field,
                    form.fields().getOrDefault(path + "." + field, String.format(Locale.ROOT, "%.2f", metres[axis])));
        }
        return new Row(path, typed);
    }

    private static boolean isMetres(Row row, String axis) {
        return METRES.matcher(row.text(axis).strip()).matches();
    }

    private static double metres(Row row, String axis) {
        return Double.parseDouble(row.text(axis).strip());
    }

    /** What a point is called that has a row. */
    public String code(Row row) {
        return points.get(Integer.parseInt(row.path().replaceAll("[^0-9]", ""))).code();
    }
}
