package dapple.exposure;

import dapple.animal.AnimalHistory;
import dapple.light.dose.Circumstance;
import dapple.light.dose.DayOfLight;
import dapple.light.dose.DayPart;
import dapple.light.dose.DoseRange;
import dapple.light.dose.UvIndexOfDay;
import dapple.light.judging.MeasuredAmount;
import dapple.light.quantity.ErythemalDose;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** What light an animal had day by day as a file, over the period that its page shows. */
@Controller
@Allowed(Action.SEE_ANIMALS)
class DoseCsvController {
    private static final double SECONDS_PER_HOUR = 3600;

    private final AnimalPage shown;
    private final ExposureWords words;
    private final CsvSheets sheets;

    DoseCsvController(AnimalPage shown, ExposureWords words, CsvSheets sheets) {
        this.shown = shown;
        this.words = words;
        this.sheets = sheets;
    }

    @GetMapping("/animals/{animalId}.csv")
    View of(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @RequestParam(required = false) @Nullable String from,
            @RequestParam(required = false) @Nullable String to) {
        AnimalHistory history = shown.history(me, animalId);
        return sheets.of(
                me.site(),
                "dose-" + history.animal().accessionNumber(),
                columns(history),
                shown.exposure(me, history, from, to).days());
    }

    private CsvColumns<DayOfLight> columns(AnimalHistory history) {
        return CsvColumns.<DayOfLight>none()
                .with("accession-number", day -> history.animal().accessionNumber())
                .with("day", DayOfLight::date)
                .with("lit", day -> day.lit().map(DoseCsvController::hours))
                .with("uv-index-basking", index(DayPart::basking))
                .with("uv-index-basking-in-words", words::basking)
                .with("uv-index-shade", index(DayPart::shade))
                .with("uv-index-shade-in-words", words::shade)
                .with("dose-low", dose(DoseRange::lowest))
                .with("dose-best", dose(DoseRange::best))
                .with("dose-high", dose(DoseRange::highest))
                .word("certainty", "certainty.", DayOfLight::certainty)
                .word("found", "day-found.", DayOfLight::judgement);
    }

    /** Of a day on which it changed there is no one number; its words tell each in turn. */
    private static Function<DayOfLight, Optional<?>> index(Function<DayPart, UvIndexOfDay> place) {
        return day -> {
            List<Optional<Double>> inTurn = day.parts().stream()
                    .map(part -> index(part, place))
                    .distinct()
                    .toList();
            return inTurn.size() == 1 ? inTurn.get(0) : Optional.empty();
        };
    }

    private static Optional<Double> index(DayPart part, Function<DayPart, UvIndexOfDay> place) {
        return Optional.of(part)
                .filter(one -> one.circumstance() == Circumstance.UNDER_LAMPS)
                .flatMap(one -> place.apply(one).index())
                .map(MeasuredAmount::amount)
                .map(DoseCsvController::rounded);
    }

    private static Function<DayOfLight, Optional<?>> dose(Function<DoseRange, ErythemalDose> part) {
        return day -> day.dose().known().map(part).map(ErythemalDose::uviHours).map(DoseCsvController::rounded);
    }

    private static double hours(Duration time) {
        return rounded(time.toSeconds() / SECONDS_PER_HOUR);
    }

    /** To a thousandth: more is not known. */
    private static double rounded(double amount) {
        return Math.rint(amount * 1000) / 1000;
    }
}
