package dapple.rig;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The columns of a fitting's gear; empty is not known. */
@Embeddable
record StoredGear(
        @Enumerated(EnumType.STRING) @Nullable Ballast ballast,
        @Enumerated(EnumType.STRING) @Nullable LampControl lampControl,
        @Nullable Double voltageRatio) {

    static StoredGear of(Gear gear) {
        return new StoredGear(
                gear.ballast().orElse(null),
                gear.control().orElse(null),
                gear.voltageRatio().orElse(null));
    }

    Gear gear() {
        return new Gear(
                Optional.ofNullable(ballast), Optional.ofNullable(lampControl), Optional.ofNullable(voltageRatio));
    }
}
