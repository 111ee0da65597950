package dapple.light.dose;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A local day of an animal.
 *
 * @param parts in order, more than one only where something changed that day while lamps were on; at least one
 * @param dose available to the animal
 */
public record DayOfLight(LocalDate date, List<DayPart> parts, DoseOfDay dose) {
    static DayOfLight of(LocalDate date, List<DayPart> all, Duration basking) {
        List<DayPart> lit = all.stream().filter(part -> !part.isDark()).toList();
        List<DayPart> parts = lit.isEmpty() ? all : lit;
        return new DayOfLight(date, parts, dose(parts, baskingShare(parts, basking)));
    }

    /** How long at least one ultraviolet lamp was on; none where that is not known. */
    public Optional<Duration> lit() {
        return lit(parts);
    }

    /** That of the part that is known least; planned off where all of the day was. */
    public Certainty certainty() {
        return parts.stream()
                .map(DayPart::certainty)
                .max(Comparator.naturalOrder())
                .orElse(Certainty.UNKNOWN);
    }

    public DayJudgement judgement() {
        return DayJudgement.ofParts(parts.stream().map(DayPart::judgement).toList());
    }

    private static double baskingShare(List<DayPart> parts, Duration basking) {
        Duration lit = lit(parts).orElse(Duration.ZERO);
        return lit.compareTo(basking) <= 0 ? 1 : (double) basking.toNanos() / lit.toNanos();
    }

    private static Optional<Duration> lit(List<DayPart> parts) {
        if (parts.stream().anyMatch(part -> part.lit().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(parts.stream().flatMap(part -> part.lit().stream()).reduce(Duration.ZERO, Duration::plus));
    }

    private static DoseOfDay dose(List<DayPart> parts, double baskingShare) {
        return parts.stream()
                .map(part -> part.dose(baskingShare))
                .reduce(new DoseOfDay.Known(DoseRange.NONE), DoseOfDay::plus);
    }
}
