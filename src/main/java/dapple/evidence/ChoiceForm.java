package dapple.evidence;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** Which row is chosen and why, with the number of the choice that held when the form was made. */
record ChoiceForm(
        @NotNull @Nullable Integer seen,

        @NotNull(message = "{evidence.choose.none}") @Nullable
        Long evidenceId,

        @Line @Size(max = 300) String reason) {

    static ChoiceForm after(int seen) {
        return new ChoiceForm(seen, null, "");
    }

    ChoiceForm onChoice(int holding) {
        return new ChoiceForm(holding, evidenceId, reason);
    }

    NewChoice choice(long speciesId, long personId) {
        return new NewChoice(speciesId, Given.of(seen), Given.of(evidenceId), reason.strip(), personId);
    }
}
