package dapple.comparison;

import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** One comparison: what was read of it, and once it has ended what it says. */
@Controller
@RequestMapping("/meters/comparisons/{comparisonId}")
class MeterComparisonController {
    private static final String PAGE = "comparison/comparison";

    private final Comparisons comparisons;
    private final MeterReads reads;
    private final Meters meters;
    private final Places places;
    private final People people;
    private final Clock clock;

    MeterComparisonController(
            Comparisons comparisons, MeterReads reads, Meters meters, Places places, People people, Clock clock) {
        this.comparisons = comparisons;
        this.reads = reads;
        this.meters = meters;
        this.places = places;
        this.people = people;
        this.clock = clock;
    }

    @GetMapping
    @Allowed(Action.SEE_STOCK)
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long comparisonId, Model model) {
        model.addAttribute("form", new EndForm(""));
        return show(me, comparisonId, model);
    }

    /** Who comes second gets 409, and the page says how it ended. */
    @PostMapping("/end")
    @Allowed(Action.KEEP_METERS)
    String end(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long comparisonId,
            @Valid @ModelAttribute("form") EndForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (errors.hasErrors()) {
            return show(me, comparisonId, model);
        }
        try {
            String reason = form.reason().strip();
            comparisons.end(
                    me.siteId(), comparisonId, new ComparisonFacts.Broken(clock.instant(), me.personId(), reason));
            return "redirect:/meters/comparisons/" + comparisonId;
        } catch (ConflictException already) {
            model.addAttribute("already", true);
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return show(me, comparisonId, model);
        }
    }

    /** No ratio is shown while it is under way: nobody shall read what is wished. */
    private String show(SignedIn me, long comparisonId, Model model) {
        ComparisonFacts comparison = comparisons.get(me.siteId(), comparisonId);
        List<MeterRead> read = reads.of(comparison);
        Map<Long, MeterFacts> meterById = meters.byId(me.siteId());
        Map<Long, Candidate> placeById = places.byId(me.siteId());
        model.addAttribute("comparison", comparison);
        model.addAttribute("progress", Progress.of(comparison, read));
        model.addAttribute("meterById", meterById);
        model.addAttribute("placeById", placeById);
        model.addAttribute("visits", visits(comparison, placeById));
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute(
                "ratios", comparison.isUnderWay() ? List.of() : Ratio.of(read, meterById, enclosures(placeById)));
        return PAGE;
    }

    /** A visit of its own for each enclosure. */
    private static Map<Long, UUID> visits(ComparisonFacts comparison, Map<Long, Candidate> placeById) {
        return comparison.pointIds().stream()
                .flatMap(point -> Optional.ofNullable(placeById.get(point)).stream())
                .map(Candidate::enclosureId)
                .distinct()
                .collect(Collectors.toMap(enclosure -> enclosure, enclosure -> UUID.randomUUID()));
    }

    private static Map<Long, Long> enclosures(Map<Long, Candidate> placeById) {
        return placeById.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, place -> place.getValue().enclosureId()));
    }
}
