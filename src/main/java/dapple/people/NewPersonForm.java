package dapple.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;

/** A person to add at this site. */
record NewPersonForm(
        @SignInName String signInName,
        @NotBlank @Size(max = 120) String name,
        @NewPassword String password,
        @NotEmpty Set<Role> roles,

        @Nullable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE)
        LocalDate endsOn) {

    NewPersonForm {
        roles = roles == null ? Set.of() : roles;
    }

    static NewPersonForm empty() {
        return new NewPersonForm("", "", "", Set.of(), null);
    }

    /** The last day of access, if there is one. */
    Optional<LocalDate> lastDay() {
        return Optional.ofNullable(endsOn);
    }

    NewPerson person() {
        return new NewPerson(signInName, name, password);
    }
}
