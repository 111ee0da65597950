package dapple.door;

import dapple.enclosure.EnclosureFacts;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * Which labels are wanted, and on which sheet.
 *
 * @param first the first place that is still free on the sheet
 */
record LabelsForm(
        @Nullable Boolean all,
        @Nullable List<Long> room,
        @Nullable List<Long> enclosure,
        @NotNull(message = "{doors.sheet.needed}") @Nullable LabelSheet sheet,

        @NotNull(message = "{doors.first.needed}") @Min(1) @Max(LabelSheet.MOST_LABELS) @Nullable
        Integer first) {

    static LabelsForm empty() {
        return new LabelsForm(null, null, null, LabelSheet.A4_3_BY_7, 1);
    }

    /** What no field says alone. */
    void check(List<EnclosureFacts> inUse, Errors errors) {
        if (sheet != null && first != null && first > sheet.labels()) {
            errors.rejectValue("first", "doors.first.beyond", new Object[] {sheet.labels()}, "");
        }
        if (of(inUse).isEmpty()) {
            errors.rejectValue("enclosure", "doors.none-chosen");
        }
    }

    /** Those that are wanted of the enclosures in use, in their order. */
    List<EnclosureFacts> of(List<EnclosureFacts> inUse) {
        return inUse.stream().filter(this::isWanted).toList();
    }

    private boolean isWanted(EnclosureFacts one) {
        return Boolean.TRUE.equals(all)
                || (room != null && room.contains(one.roomId()))
                || (enclosure != null && enclosure.contains(one.id()));
    }

    /** The same as part of an address. */
    String query() {
        UriComponentsBuilder query =
                UriComponentsBuilder.newInstance().queryParam("sheet", sheet).queryParam("first", first);
        if (Boolean.TRUE.equals(all)) {
            return query.queryParam("all", true).toUriString();
        }
        ids(room).forEach(id -> query.queryParam("room", id));
        ids(enclosure).forEach(id -> query.queryParam("enclosure", id));
        return query.toUriString();
    }

    private static Stream<Long> ids(@Nullable List<Long> some) {
        return Optional.ofNullable(some).stream().flatMap(List::stream);
    }
}
