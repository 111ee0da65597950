package dapple.rig;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a circuit is called and which room it serves, with the version that the form was made from.
 *
 * @param roomId none: the whole site
 */
record CircuitForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 80) String name,
        @Nullable Long roomId) {

    static CircuitForm empty() {
        return new CircuitForm(0L, "", null);
    }

    static CircuitForm of(CircuitDetails circuit) {
        return new CircuitForm(
                circuit.version(),
                circuit.facts().name(),
                circuit.facts().roomId().orElse(null));
    }

    CircuitForm onVersion(long newVersion) {
        return new CircuitForm(newVersion, name, roomId);
    }

    long versionSeen() {
        return Given.of(version);
    }

    CircuitChange change() {
        return new CircuitChange(Optional.ofNullable(roomId), name.strip());
    }
}
