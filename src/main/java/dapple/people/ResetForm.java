package dapple.people;

import jakarta.validation.constraints.NotBlank;

/** A new password against a code. */
record ResetForm(
        @SignInName String signInName,
        @NotBlank String code,
        @NewPassword String password) {
    static ResetForm empty() {
        return new ResetForm("", "", "");
    }
}
