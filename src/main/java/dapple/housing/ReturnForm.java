package dapple.housing;

import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Since when an animal is here again, and why. */
record ReturnForm(
        @NotNull @Nullable UUID key,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Line @Size(max = 300) String reason) {}
