package dapple.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.context.NoSuchMessageException;

/**
 * Puts the changes of one thing in words.
 *
 * @param zone the time zone of the site
 */
public record HistoryWords(AuditedThing thing, MessageSource messages, Formats formats, ZoneId zone) {

    /** What a field is called; where no message says so, as the program calls it. */
    public String field(FieldChange change) {
        return says("history.field." + change.entity() + "." + change.field())
                .orElseGet(() -> change.field().replaceAll("(?=[A-Z])", " ").toLowerCase(Locale.ROOT));
    }

    /** What a field held. */
    public String held(FieldChange change, Optional<Object> held) {
        return held.map(some -> some instanceof HeldSet set ? together(change, set) : said(change.field(), some))
                .orElseGet(() -> message("history.nothing"));
    }

    /** The same in a file: what a spreadsheet counts with stays what it is. */
    public Optional<Object> cell(FieldChange change, Optional<Object> held) {
        return held.map(some -> isCounted(change.field(), some) ? some : held(change, held));
    }

    private boolean isCounted(String field, Object held) {
        boolean isSaid = thing.words().containsKey(field) || thing.names().containsKey(field);
        return !isSaid
                && (held instanceof Double
                        || held instanceof Integer
                        || held instanceof Instant
                        || held instanceof LocalDate
                        || held instanceof Boolean);
    }

    /** In the order of the alphabet; what it means that there is none, a message may say. */
    private String together(FieldChange change, HeldSet set) {
        if (set.elements().isEmpty()) {
            return says("history.field." + change.entity() + "." + change.field() + ".none")
                    .orElseGet(() -> message("history.nothing"));
        }
        return set.elements().stream()
                .map(element -> said(element.named(), element.held()))
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private String said(String field, Object held) {
        if (thing.words().containsKey(field)) {
            return says(thing.words().get(field) + held).orElseGet(held::toString);
        }
        return Optional.ofNullable(thing.names().get(field))
                .map(names -> name(names, held))
                .orElseGet(() -> plain(held));
    }

    private String name(Map<Long, String> names, Object held) {
        return held instanceof Long id && names.containsKey(id)
                ? names.getOrDefault(id, "")
                : message("history.no-name");
    }

    private String plain(Object held) {
        if (held instanceof Instant at) {
            return formats.dayAndTime(at, zone);
        } else if (held instanceof LocalDate day) {
            return formats.day(day);
        } else if (held instanceof Boolean yes) {
            return message(yes ? "history.yes" : "history.no");
        } else if (held instanceof Double number) {
            return formats.plain(number);
        }
        return held.toString();
    }

    private Optional<String> says(String key) {
        try {
            return Optional.of(message(key));
        } catch (NoSuchMessageException silent) {
            return Optional.empty();
        }
    }

    private String message(String key) {
        return messages.getMessage(key, null, Locale.UK);
    }
}
