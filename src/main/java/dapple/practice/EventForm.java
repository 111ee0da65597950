package dapple.practice;

import dapple.site.Occurrence;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What happened to a meter, with the key that lets it be sent twice and stored once. */
record EventForm(
        @NotNull @Nullable UUID key,

        @NotNull(message = "{practice.event.needed}") @Nullable
        MeterEventKind kind,

        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,

        @Pattern(regexp = "(?U)\\P{Cntrl}*", message = "{arrange.line}") @Size(max = 200)
        String note) {
    EventForm {
        note = note == null ? "" : note;
    }

    static EventForm empty(LocalDateTime now) {
        return new EventForm(UUID.randomUUID(), null, now, null, "");
    }
}
