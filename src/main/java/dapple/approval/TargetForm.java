package dapple.approval;

import dapple.site.Line;
import dapple.target.Photoperiod;
import dapple.target.SourcedLimit;
import jakarta.validation.constraints.Size;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The next version of a target as it was typed. Every field is text, so that each comes back as typed.
 *
 * @param seen number of the version in force when the form was made; 0 for none
 * @param zone method and number, as in SUNBEAM-3
 * @param cells by {@link CellName}
 * @param hours hours of light a day by number of the month
 * @param homeLatitude degrees, of which hours of light are computed on demand
 * @param homeShifted whether half a year shifted
 * @param earlier whether a first version counts for readings taken before too
 * @param shown what changes were shown to the person before
 */
record TargetForm(
        String seen,
        String zone,
        Map<String, String> cells,
        Map<String, String> hours,
        String hoursMark,
        String hoursSource,
        String homeLatitude,
        @Nullable Boolean homeShifted,
        @Line @Size(max = 300) String reason,
        @Nullable Boolean earlier,
        String shown) {

    TargetForm {
        seen = Objects.requireNonNullElse(seen, "");
        zone = Objects.requireNonNullElse(zone, "");
        cells = Objects.requireNonNullElse(cells, Map.of());
        hours = Objects.requireNonNullElse(hours, Map.of());
        hoursMark = Objects.requireNonNullElse(hoursMark, "");
        hoursSource = Objects.requireNonNullElse(hoursSource, "");
        homeLatitude = Objects.requireNonNullElse(homeLatitude, "");
        shown = Objects.requireNonNullElse(shown, "");
    }

    /** What a zone's limits, or those of a version, and a photoperiod read as typed. */
    static TargetForm of(int seen, String zone, List<SourcedLimit> limits, Optional<Photoperiod> photoperiod) {
        Map<String, String> cells = new HashMap<>();
        limits.forEach(limit -> CellName.type(limit, cells));
        return new TargetForm(
                String.valueOf(seen),
                zone,
                cells,
                photoperiod.map(TargetForm::typed).orElse(Map.of()),
                photoperiod.map(lit -> lit.mark().name()).orElse(""),
                photoperiod.map(Photoperiod::source).orElse(""),
                "",
                null,
                "",
                null,
                "");
    }

    TargetForm after(int newest) {
        return with(String.valueOf(newest), "");
    }

    TargetForm showing(String changes) {
        return with(seen, changes);
    }

    private TargetForm with(String newest, String changes) {
        return new TargetForm(
                newest,
                zone,
                cells,
                hours,
                hoursMark,
                hoursSource,
                homeLatitude,
                homeShifted,
                reason,
                earlier,
                changes);
    }

    /** The same, ticked for readings taken before too or not. */
    TargetForm forEarlierReadings(boolean isForThem) {
        return new TargetForm(
                seen, zone, cells, hours, hoursMark, hoursSource, homeLatitude, homeShifted, reason, isForThem, shown);
    }

    /** The same with these hours of light, none of which was shown yet. */
    TargetForm lit(Photoperiod light) {
        return new TargetForm(
                seen,
                zone,
                cells,
                typed(light),
                light.mark().name(),
                light.source(),
                homeLatitude,
                homeShifted,
                reason,
                earlier,
                "");
    }

    private static Map<String, String> typed(Photoperiod light) {
        Map<String, String> hours = new HashMap<>();
        for (int month = 1; month <= Photoperiod.MONTHS; month++) {
            hours.put(String.valueOf(month), CellName.plain(light.hours().get(month - 1)));
        }
        return hours;
    }

    boolean isShifted() {
        return Boolean.TRUE.equals(homeShifted);
    }

    /** For readings taken before too: only what follows no version can be. */
    boolean isForEarlierReadings() {
        return versionSeen() == 0 && Boolean.TRUE.equals(earlier);
    }

    /** What is no number was not made by the form: no version was seen. */
    int versionSeen() {
        return seen.matches("[0-9]{1,9}") ? Integer.parseInt(seen) : -1;
    }

    String cell(String name) {
        return Objects.requireNonNullElse(cells.get(name), "");
    }

    String hour(int month) {
        return Objects.requireNonNullElse(hours.get(String.valueOf(month)), "");
    }
}
