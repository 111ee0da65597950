package dapple.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** What a new key is for. */
record KeyForm(@NotBlank @Size(max = 80) String keyName) {
    static KeyForm empty() {
        return new KeyForm("");
    }
}
