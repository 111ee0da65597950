package dapple.desk;

import dapple.prediction.Note;
import dapple.site.Occurrence;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A draft that hangs.
 *
 * @param key of this entry: a form sent twice is one change
 * @param seen the change of the rig that was recorded last when the form was made
 * @param version of the draft then
 */
record InstallForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @NotNull @Nullable Long version,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note) {}
