package dapple.confirmation;

import dapple.site.Line;
import dapple.species.UvZone;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Species ticked for confirmation, each with its zone, and one reason. Ids are text, so that each comes back as typed.
 *
 * @param zones code of the zone, as in SUNBEAM-3, by species
 * @param earlier whether the targets count for readings taken before too
 */
record ConfirmationForm(
        @NotEmpty List<String> species,
        Map<String, String> zones,
        @Line @Size(max = 300) String reason,
        @Nullable Boolean earlier) {

    ConfirmationForm {
        species = Objects.requireNonNullElse(species, List.of());
        zones = Objects.requireNonNullElse(zones, Map.of());
    }

    static ConfirmationForm empty(boolean isForEarlierReadings) {
        return new ConfirmationForm(List.of(), Map.of(), "", isForEarlierReadings);
    }

    boolean isForEarlierReadings() {
        return Boolean.TRUE.equals(earlier);
    }

    /** The ticked species with their zones; fewer than ticked if one of them cannot be read. */
    List<Confirmed> confirmed() {
        return species.stream().distinct().flatMap(id -> read(id).stream()).toList();
    }

    boolean isReadable() {
        return confirmed().size() == species.stream().distinct().count();
    }

    private Optional<Confirmed> read(String id) {
        return Optional.ofNullable(zones.get(id))
                .flatMap(UvZone::withCode)
                .filter(zone -> id.matches("[0-9]{1,18}"))
                .map(zone -> new Confirmed(Long.parseLong(id), zone));
    }
}
