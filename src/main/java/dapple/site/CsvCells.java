package dapple.site;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;

/** How cells are written so that spreadsheets read them right: what is unknown is empty, and no text is a formula. */
final class CsvCells {
    private static final DateTimeFormatter WITH_OFFSET =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    /** What spreadsheets take for the beginning of a formula. */
    private static final String BEGINS_FORMULAS = "=+-@\t\r";

    private static final String GUARD = "'";
    private static final String BETWEEN = "; ";

    private final MessageSource words;
    private final ZoneId zone;

    CsvCells(MessageSource words, ZoneId zone) {
        this.words = words;
        this.zone = zone;
    }

    <T> String cell(CsvColumns.Column<T> column, T row) {
        return written(column.cell().apply(row), column.prefix());
    }

    String title(CsvColumns.Column<?> column) {
        return word("column." + column.title());
    }

    private static String guarded(String text) {
        return !text.isEmpty() && BEGINS_FORMULAS.indexOf(text.charAt(0)) >= 0 ? GUARD + text : text;
    }

    private String written(Object content, Optional<String> prefix) {
        if (content instanceof Optional<?> maybe) {
            return maybe.isPresent() ? written(maybe.get(), prefix) : "";
        }
        if (content instanceof Collection<?> several) {
            return guarded(several.stream().map(one -> text(one, prefix)).collect(Collectors.joining(BETWEEN)));
        }
        if (content instanceof String || content instanceof Enum) {
            return guarded(text(content, prefix));
        }
        if (content instanceof Double number) {
            return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        }
        if (content instanceof Integer || content instanceof Long) {
            return content.toString();
        }
        return writtenTime(content);
    }

    private String text(Object content, Optional<String> prefix) {
        if (content instanceof Enum<?> named) {
            return word(prefix.orElseThrow(() -> unknown(content)) + named.name());
        }
        return content instanceof String text ? text : written(content, prefix);
    }

    private String writtenTime(Object content) {
        if (content instanceof Instant at) {
            return WITH_OFFSET.format(at.atZone(zone));
        }
        if (content instanceof LocalDate day) {
            return day.toString();
        }
        if (content instanceof Boolean is) {
            return word(is ? "csv.yes" : "csv.no");
        }
        throw unknown(content);
    }

    private static IllegalArgumentException unknown(Object content) {
        return new IllegalArgumentException("a cell must be of a kind that is written, was "
                + content.getClass().getSimpleName());
    }

    private String word(String key) {
        return words.getMessage(key, null, Locale.UK);
    }
}
