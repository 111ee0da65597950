package dapple.comparison;

import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.practice.MeterStanding;
import dapple.practice.MeterStandings;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The comparisons of a site: due, under way, past; and the form that begins one. */
@Controller
@RequestMapping("/meters/comparisons")
class ComparisonsController {
    private static final String FORM = "comparison/new";

    private final Comparisons comparisons;
    private final Upkeeping upkeeping;
    private final Meters meters;
    private final MeterStandings standings;
    private final Places places;

    ComparisonsController(
            Comparisons comparisons, Upkeeping upkeeping, Meters meters, MeterStandings standings, Places places) {
        this.comparisons = comparisons;
        this.upkeeping = upkeeping;
        this.meters = meters;
        this.standings = standings;
        this.places = places;
    }

    @GetMapping
    @Allowed(Action.SEE_STOCK)
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("due", upkeeping.comparisons(me));
        model.addAttribute("comparisons", comparisons.all(me.siteId()));
        model.addAttribute("meterById", meters.byId(me.siteId()));
        return "comparison/list";
    }

    @GetMapping("/new")
    @Allowed(Action.KEEP_METERS)
    String fresh(@AuthenticationPrincipal SignedIn me, @RequestParam Quantity quantity, Model model) {
        List<MeterFacts> fitting = fitting(me, quantity);
        MeterStanding standing = standings.at(me.siteId(), me.zone());
        List<MeterFacts> atHand =
                fitting.stream().filter(meter -> !standing.isAway(meter)).toList();
        List<Candidate> there = places.of(me.siteId(), quantity);
        model.addAttribute("form", BeginForm.proposed(atHand, there));
        return asking(me, quantity, fitting, there, model);
    }

    @PostMapping("/new")
    @Allowed(Action.KEEP_METERS)
    String begin(
            @AuthenticationPrincipal SignedIn me,
            @RequestParam Quantity quantity,
            @Valid @ModelAttribute("form") BeginForm form,
            BindingResult errors,
            Model model) {
        List<MeterFacts> fitting = fitting(me, quantity);
        List<Candidate> there = places.of(me.siteId(), quantity);
        if (!errors.hasErrors()) {
            form.check(fitting, there, errors);
        }
        if (errors.hasErrors()) {
            return asking(me, quantity, fitting, there, model);
        }
        try {
            return "redirect:/meters/comparisons/" + comparisons.begin(form.begun(me, quantity, there));
        } catch (TakenException taken) {
            errors.reject("comparison.taken");
            return asking(me, quantity, fitting, there, model);
        }
    }

    private List<MeterFacts> fitting(SignedIn me, Quantity quantity) {
        if (quantity.isTemperature()) {
            throw new NotFoundException();
        }
        return meters.inUse(me.siteId()).stream()
                .filter(meter -> meter.quantity() == quantity)
                .toList();
    }

    private String asking(
            SignedIn me, Quantity quantity, List<MeterFacts> fitting, List<Candidate> there, Model model) {
        model.addAttribute("quantity", quantity);
        model.addAttribute("meters", fitting);
        model.addAttribute("standing", standings.at(me.siteId(), me.zone()));
        List<Candidate> proposed = BeginForm.proposal(fitting, there);
        model.addAttribute("proposed", proposed);
        model.addAttribute(
                "others",
                there.stream().filter(place -> !proposed.contains(place)).toList());
        return FORM;
    }
}
