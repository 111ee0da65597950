package dapple.desk;

import dapple.draft.DraftRig;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The form of a desk as it was typed: whatever is wrong with it, nothing is lost.
 *
 * @param fields those that belong to no part: name, version, quantity, what is to be added
 */
record DeskForm(List<Row> lamps, List<Row> covers, List<Row> furniture, Map<String, String> fields) {
    /** What can be drawn. */
    public static final List<Quantity> QUANTITIES = List.of(Quantity.UV_INDEX, Quantity.ILLUMINANCE, Quantity.IR_A);

    private static final Pattern OF_A_PART =
            Pattern.compile("(lamps|covers|furniture)\\[([0-9]{1,3})]\\.([a-zA-Z]{1,30})");
    private static final int LONGEST = 300;

    public DeskForm {
        lamps = numbered("lamps", lamps);
        covers = numbered("covers", covers);
        furniture = numbered("furniture", furniture);
        fields = Map.copyOf(fields);
    }

    private static List<Row> numbered(String kind, List<Row> rows) {
        List<Row> numbered = new ArrayList<>();
        for (Row row : rows) {
            numbered.add(row.at(kind + "[" + numbered.size() + "]"));
        }
        return List.copyOf(numbered);
    }

    static DeskForm of(Map<String, String> sent) {
        Map<String, TreeMap<Integer, Map<String, String>>> parts = new LinkedHashMap<>();
        Map<String, String> fields = new LinkedHashMap<>();
        sent.forEach((name, typed) -> {
            String text = typed.substring(0, Math.min(typed.length(), LONGEST));
            Matcher part = OF_A_PART.matcher(name);
            if (part.matches()) {
                parts.computeIfAbsent(part.group(1), kind -> new TreeMap<>())
                        .computeIfAbsent(Integer.valueOf(part.group(2)), number -> new LinkedHashMap<>())
                        .put(part.group(3), text);
            } else {
                fields.put(name, text);
            }
        });
        return new DeskForm(rows(parts, "lamps"), rows(parts, "covers"), rows(parts, "furniture"), fields);
    }

    private static List<Row> rows(Map<String, TreeMap<Integer, Map<String, String>>> parts, String kind) {
        return Optional.ofNullable(parts.get(kind)).orElseGet(TreeMap::new).values().stream()
                .limit(DraftRig.MOST)
                .map(typed -> new Row(kind, typed))
                .toList();
    }

    public String field(String name) {
        return fields.getOrDefault(name, "");
    }

    /** Whether something is being moved. */
    boolean isRough() {
        return field("rough").equals("true");
    }

    DeskForm with(String name, String text) {
        Map<String, String> changed = new LinkedHashMap<>(fields);
        changed.put(name, text);
        return new DeskForm(lamps, covers, furniture, changed);
    }

    /** The number of the state that the form was made from; one that never was where it is no number. */
    long version() {
        String text = field("version").strip();
        return text.matches("[0-9]{1,18}") ? Long.parseLong(text) : -1;
    }

    public Quantity quantity() {
        return QUANTITIES.stream()
                .filter(quantity -> quantity.name().equals(field("quantity")))
                .findFirst()
                .orElse(Quantity.UV_INDEX);
    }

    DeskForm without(String path) {
        return new DeskForm(without(lamps, path), without(covers, path), without(furniture, path), fields);
    }

    private static List<Row> without(List<Row> rows, String path) {
        return rows.stream().filter(row -> !row.path().equals(path)).toList();
    }

    DeskForm plusLamp(Map<String, String> typed) {
        return new DeskForm(plus(lamps, typed), covers, furniture, fields);
    }

    DeskForm plusCover(Map<String, String> typed) {
        return new DeskForm(lamps, plus(covers, typed), furniture, fields);
    }

    DeskForm plusFurniture(Map<String, String> typed) {
        return new DeskForm(lamps, covers, plus(furniture, typed), fields);
    }

    private static List<Row> plus(List<Row> rows, Map<String, String> typed) {
        List<Row> more = new ArrayList<>(rows);
        if (more.size() < DraftRig.MOST) {
            more.add(new Row("", typed));
        }
        return more;
    }
}
