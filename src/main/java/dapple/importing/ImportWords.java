package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Meaning;
import dapple.importing.sheet.Reason;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Says in words what columns mean, what is wrong with rows, and what is worth knowing. */
@Component
class ImportWords {
    private static final String BETWEEN = "\\|";

    private final MessageSource messages;

    ImportWords(MessageSource messages) {
        this.messages = messages;
    }

    /** A meaning to choose. */
    record Option(String code, String label) {}

    String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }

    String field(Field field) {
        return say("import.field." + field);
    }

    String meaning(Meaning meaning) {
        if (meaning instanceof Meaning.Of of) {
            return field(of.field());
        }
        return meaning instanceof Meaning.Amount amount ? amount(amount) : say("import.left-out");
    }

    private String amount(Meaning.Amount amount) {
        String place = amount.role()
                .map(role -> say("role-of-point." + role))
                .or(amount::point)
                .orElseGet(() -> say("import.place.unsaid"));
        String where = amount.enclosure().map(code -> code + ": ").orElse("");
        return say("import.amount", where, say("quantity." + amount.quantity()), place);
    }

    /** All readings that a column may be of. */
    List<Option> amounts() {
        List<Option> options = new ArrayList<>();
        for (Quantity quantity : Quantity.measuredInTheField()) {
            options.add(option(new Meaning.Amount(quantity, Optional.empty())));
            Arrays.stream(PointRole.values())
                    .forEach(role -> options.add(option(new Meaning.Amount(quantity, Optional.of(role)))));
        }
        return options;
    }

    Option option(Meaning meaning) {
        return new Option(meaning.code(), meaning(meaning));
    }

    public String reason(BadRow row) {
        Object[] parts = row.text().split(BETWEEN, -1);
        if (row.reason() == Reason.MISSING) {
            return say("import.reason.MISSING", field(Field.valueOf(row.text())));
        }
        return row.reason() == Reason.SPECIES_NEAR
                ? say("import.reason.SPECIES_NEAR", parts[0], String.join(", ", others(row.text())))
                : say("import.reason." + row.reason(), parts);
    }

    /** 3, 5 to 40. */
    public String lines(BadRows rows) {
        return rows.lines().stream()
                .map(one ->
                        one.from() == one.to() ? String.valueOf(one.from()) : say("import.lines", one.from(), one.to()))
                .collect(Collectors.joining(", "));
    }

    /** What stands behind the first part of a text. */
    static List<String> others(String text) {
        return Arrays.stream(text.split(BETWEEN, -1))
                .skip(1)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    static String first(String text) {
        return text.split(BETWEEN, -1)[0];
    }

    public String notice(Notice notice) {
        List<String> others = others(notice.text());
        String second = others.isEmpty() ? "" : worded(notice.kind(), others.get(0));
        return say("import.notice." + notice.kind(), first(notice.text()), second);
    }

    private String worded(Notice.Kind kind, String code) {
        return switch (kind) {
            case DIFFERS, CONTRADICTS -> field(Field.valueOf(code));
            case METER_OTHER_QUANTITY -> say("quantity." + code);
            default -> code;
        };
    }
}
