package dapple.people;

import jakarta.validation.constraints.NotBlank;

/** A change of one's own password. */
record PasswordForm(
        @NotBlank String oldPassword, @NewPassword String password) {
    static PasswordForm empty() {
        return new PasswordForm("", "");
    }
}
