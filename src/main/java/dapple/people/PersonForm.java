package dapple.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;

/** Name and roles of a person, with the version that the form was made from. */
record PersonForm(
        @NotNull Long version,
        @NotBlank @Size(max = 120) String name,
        @NotEmpty Set<Role> roles,

        @Nullable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE)
        LocalDate endsOn) {

    PersonForm {
        roles = roles == null ? Set.of() : roles;
    }

    static PersonForm of(PersonFacts person) {
        return new PersonForm(
                person.version(),
                person.name(),
                Set.copyOf(person.roles()),
                person.lastDay().orElse(null));
    }

    PersonForm onVersion(long newVersion) {
        return new PersonForm(newVersion, name, roles, endsOn);
    }

    PersonChange change() {
        return new PersonChange(name, roles, Optional.ofNullable(endsOn));
    }
}
