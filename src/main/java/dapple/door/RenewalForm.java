package dapple.door;

import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * Why a door is given a new code.
 *
 * @param seen the code that is to be replaced
 */
record RenewalForm(
        @NotNull @Nullable String seen,
        @Line @Size(max = 300) String reason) {}
