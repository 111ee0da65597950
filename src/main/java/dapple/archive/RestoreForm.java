package dapple.archive;

import dapple.people.NewPassword;
import dapple.people.NewPerson;
import dapple.people.SignInName;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What takes an archive into an empty installation, besides its file. */
record RestoreForm(@NotBlank String code, Administrator administrator) {
    RestoreForm(String code, @Nullable Administrator administrator) {
        this.code = code;
        this.administrator = Optional.ofNullable(administrator).orElse(new Administrator("", "", ""));
    }

    static RestoreForm empty() {
        return new RestoreForm("", new Administrator("", "", ""));
    }

    /** Who is added to a year's record; all empty for a backup. */
    record Administrator(
            @NotBlank @Size(max = 120) String name,
            @SignInName String signInName,
            @NewPassword String password) {
        boolean isNamed() {
            return Stream.of(name, signInName, password).anyMatch(typed -> typed != null && !typed.isBlank());
        }
    }

    Optional<NewPerson> person() {
        return Optional.of(administrator)
                .filter(Administrator::isNamed)
                .map(named -> new NewPerson(named.signInName(), named.name(), named.password()));
    }
}
