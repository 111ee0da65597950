package dapple.prediction;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A form as the text of its fields; an empty field has none. */
final class FormText {
    private FormText() {}

    static Map<String, String> of(Record form, Set<String> without) {
        Map<String, String> text = new LinkedHashMap<>();
        for (RecordComponent field : form.getClass().getRecordComponents()) {
            if (!without.contains(field.getName())) {
                text(form, field).ifPresent(typed -> text.put(field.getName(), typed));
            }
        }
        return text;
    }

    private static Optional<String> text(Record form, RecordComponent field) {
        try {
            return Optional.ofNullable(field.getAccessor().invoke(form)).map(FormText::text);
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException("a form must let its fields be read", hidden);
        }
    }

    private static String text(Object typed) {
        return typed instanceof BigDecimal number ? number.toPlainString() : typed.toString();
    }
}
