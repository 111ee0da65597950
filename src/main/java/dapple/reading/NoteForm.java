package dapple.reading;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What somebody saw on a visit besides the numbers. */
record NoteForm(
        @NotNull @Nullable UUID key,

        @NotBlank @Size(max = NewNote.LONGEST) @Pattern(regexp = "[^\\x00]*", message = "{visit.note.characters}")
        String note) {

    static NoteForm empty() {
        return new NoteForm(UUID.randomUUID(), "");
    }
}
