package dapple.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** What begins an installation. */
record FirstRunForm(
        @NotBlank String code,
        @NotBlank @Size(max = 120) String siteName,
        @KnownTimeZone String timeZone,
        @SignInName String signInName,
        @NotBlank @Size(max = 120) String name,
        @NewPassword String password) {

    static FirstRunForm empty() {
        return new FirstRunForm("", "", zoneOf(ZoneId.systemDefault()), "", "", "");
    }

    /** What is chosen on a machine of that zone; the list has no fixed offset but UTC, under this one name. */
    static String zoneOf(ZoneId machine) {
        return machine.normalized() instanceof ZoneOffset ? "UTC" : machine.getId();
    }

    NewPerson administrator() {
        return new NewPerson(signInName, name, password);
    }
}
