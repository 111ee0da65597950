package dapple.housing;

import dapple.site.Line;
import jakarta.validation.constraints.Size;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Why a stay is wrong.
 *
 * @param enclosureId where it was instead; none: it was not moved at all
 */
record StayCorrectionForm(
        @Nullable Long enclosureId, @Line @Size(max = 300) String reason) {
    Optional<Long> instead() {
        return Optional.ofNullable(enclosureId).filter(id -> id != 0);
    }
}
