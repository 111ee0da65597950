package dapple.commissioning;

import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * That somebody accepts a rig, and why.
 *
 * @param key of this entry: a form sent twice is one acceptance
 * @param seen the change and the readings that the form was made from
 */
record AcceptForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable @Size(max = 20_000) String seen,
        @Line @Size(max = 500) String reason) {
    static AcceptForm of(Trial trial) {
        return new AcceptForm(UUID.randomUUID(), trial.seen(), "");
    }
}
