package dapple.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The fields of one part on the form of a desk, as typed.
 *
 * @param path with which their names begin, such as {@code lamps[0]}
 */
public record Row(String path, Map<String, String> typed) {
    public Row {
        typed = Map.copyOf(typed);
    }

    public String text(String field) {
        return typed.getOrDefault(field, "");
    }

    /** Its name in full. */
    public String name(String field) {
        return path + "." + field;
    }

    /** Whether it is shown unfolded: it wants another look, or has just come. */
    public boolean isOpen(Map<String, String> wrong) {
        return typed.containsKey("fresh") || wrong.keySet().stream().anyMatch(name -> name.startsWith(path + "."));
    }

    Optional<Long> number(String field) {
        String text = text(field).strip();
        return text.matches("[0-9]{1,18}") ? Optional.of(Long.valueOf(text)) : Optional.empty();
    }

    Row at(String newPath) {
        return new Row(newPath, typed);
    }

    Row with(String field, String text) {
        Map<String, String> changed = new LinkedHashMap<>(typed);
        changed.put(field, text);
        return new Row(path, changed);
    }
}
