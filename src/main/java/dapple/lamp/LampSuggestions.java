package dapple.lamp;

import dapple.site.ReferenceTable;
import dapple.site.SourceMark;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;

/** What is usual of each lamp class, from {@code shared/lamp-classes.csv}. */
@Component
class LampSuggestions {
    private final List<LampSuggestion> rows =
            ReferenceTable.rows("shared/lamp-classes.csv", LampSuggestions::suggestion);

    List<LampSuggestion> of(LampClass lampClass) {
        return rows.stream().filter(row -> row.lampClass() == lampClass).toList();
    }

    /** For the class that a form came back with, if it is one. */
    List<LampSuggestion> shownBeside(Errors errors) {
        return Optional.ofNullable(errors.getFieldValue("lampClass"))
                .filter(chosen -> !errors.hasFieldErrors("lampClass"))
                .map(chosen -> of(LampClass.valueOf(chosen.toString())))
                .orElse(List.of());
    }

    private static LampSuggestion suggestion(NamedCsvRecord row) {
        return new LampSuggestion(
                LampClass.valueOf(row.getField("lamp_class")),
                row.getField("kind"),
                number(row, "uvi_30cm_low"),
                number(row, "uvi_30cm_high"),
                number(row, "burn_in_h"),
                number(row, "useful_life_h_low"),
                number(row, "useful_life_h_high"),
                number(row, "smallest_distance_cm"),
                row.getField("hazards"),
                SourceMark.valueOf(row.getField("mark").toUpperCase(Locale.ROOT)),
                row.getField("note"));
    }

    private static Optional<Double> number(NamedCsvRecord row, String column) {
        return Optional.of(row.getField(column)).filter(text -> !text.isEmpty()).map(Double::valueOf);
    }
}
