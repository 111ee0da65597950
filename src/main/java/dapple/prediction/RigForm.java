package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.rig.RigStep;
import dapple.site.Occurrence;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What every form for a change of a rig has: its own key, the change that was seen last, when it happened, a note. */
interface RigForm {
    @Nullable
    UUID key();

    @Nullable
    Long seen();

    @Nullable
    LocalDateTime at();

    @Nullable
    Occurrence atWhich();

    @Nullable
    String note();

    /** Checks what belongs together. */
    void check(Errors errors);

    /** Checks what is measured against the size of the enclosure. */
    default void checkIn(InnerSize size, Errors errors) {}

    /**
     * What the form asks for.
     *
     * @param partId of the part that it is about, 0 for a new one
     */
    RigStep step(long partId);
}
