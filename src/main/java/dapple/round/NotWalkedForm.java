package dapple.round;

import dapple.site.Given;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** Why a walk is not walked, with the version of what was said of it. */
record NotWalkedForm(
        @NotNull @Nullable Long version,
        @NotNull Excuse.@Nullable Reason reason,

        @Size(max = 200) @Pattern(regexp = "(?U)\\P{Cntrl}*", message = "{arrange.line}") @Nullable
        String text) {

    void check(Errors errors) {
        if (reason == Excuse.Reason.OTHER && said().isEmpty()) {
            errors.rejectValue("text", "round.excuse.words");
        }
    }

    NotWalked notWalked() {
        return new NotWalked(Given.of(reason), said());
    }

    long versionSeen() {
        return Given.of(version);
    }

    private String said() {
        return text == null ? "" : text.strip();
    }
}
