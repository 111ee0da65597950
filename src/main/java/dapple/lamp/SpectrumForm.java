package dapple.lamp;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** A spectrum as text, and where it is from, with the version of the model that the form was made from. */
record SpectrumForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 200) String source,
        @Nullable String content) {

    static SpectrumForm empty(long version) {
        return new SpectrumForm(version, "", "");
    }

    SpectrumForm onVersion(long newVersion) {
        return new SpectrumForm(newVersion, source, content);
    }

    long versionSeen() {
        return Given.of(version);
    }

    String text() {
        return content == null ? "" : content;
    }
}
