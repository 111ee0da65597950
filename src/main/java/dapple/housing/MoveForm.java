package dapple.housing;

import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who goes where, when and why.
 *
 * @param from the enclosure that the form listed; 0: those that are nowhere
 * @param withoutTarget that some have no target yet is accepted
 * @param despite names the conflicts with new neighbours that are accepted
 */
record MoveForm(
        @NotNull @Nullable Long from,
        @NotEmpty(message = "{move.who.needed}") @Nullable List<Long> animalIds,
        @NotNull(message = "{move.to.needed}") @Nullable Long to,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Line @Size(max = 300) String reason,
        @Nullable Boolean withoutTarget,
        @Nullable String despite) {

    static MoveForm of(long from, List<Long> animalIds, LocalDateTime now) {
        return new MoveForm(from, animalIds, null, now, null, "", false, null);
    }

    Optional<Long> fromEnclosure() {
        return Optional.ofNullable(from).filter(id -> id != 0);
    }

    List<Long> chosen() {
        return animalIds == null
                ? List.of()
                : animalIds.stream().filter(Objects::nonNull).toList();
    }

    boolean acceptsNoTarget() {
        return Boolean.TRUE.equals(withoutTarget);
    }
}
