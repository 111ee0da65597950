package dapple.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.time.ZoneId;

/** What begins an installation. */
record FirstRunForm(
        @NotBlank String code,
        @NotBlank @Size(max = 120) String siteName,
        @KnownTimeZone String timeZone,
        @SignInName String signInName,
        @NotBlank @Size(max = 120) String name,
        @NewPassword String password) {

    static FirstRunForm empty() {
        return new FirstRunForm("", "", ZoneId.systemDefault().getId(), "", "", "");
    }

    NewPerson administrator() {
        return new NewPerson(signInName, name, password);
    }
}
