package dapple.lamp;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** Why a lamp model is used without its spectrum, with the version of the model that the form was made from. */
record WaiverForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 500) String reason) {

    WaiverForm onVersion(long newVersion) {
        return new WaiverForm(newVersion, reason);
    }

    long versionSeen() {
        return Given.of(version);
    }
}
