package dapple.round;

import dapple.site.Given;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** To whom one walk is given, with the version of what was said of it. */
record GiveForm(@NotNull @Nullable Long version, @Nullable String to) {
    String key() {
        return to == null ? "" : to;
    }

    long versionSeen() {
        return Given.of(version);
    }
}
