package dapple.site;

import java.util.List;
import org.springframework.validation.Errors;

/**
 * Numbers of a form that belong together: all are given, or none.
 *
 * @param message the message beside those that are missing
 */
public record Together(List<String> fields, String message) {
    public Together(List<String> fields) {
        this(fields, "arrange.all-or-none");
    }

    /** Asks for those that are missing while others are given. */
    public void check(Errors errors) {
        List<String> missing =
                fields.stream().filter(field -> isMissing(errors, field)).toList();
        if (missing.size() < fields.size()) {
            missing.forEach(field -> errors.rejectValue(field, message));
        }
    }

    private static boolean isMissing(Errors errors, String field) {
        Object typed = errors.getFieldValue(field);
        return typed == null || typed.toString().isBlank();
    }
}
