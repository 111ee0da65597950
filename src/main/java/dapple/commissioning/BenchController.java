package dapple.commissioning;

import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.Lamps;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Caution;
import dapple.site.ConflictException;
import dapple.site.When;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One lamp on a bench: readings at several distances, the curve through them, and what of it is kept. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamps/{lampId}/bench")
class BenchController {
    private static final String PAGE = "commissioning/bench";

    private final Lamps lamps;
    private final Meters meters;
    private final BenchFitting fitting;
    private final BenchKeeping keeping;
    private final Clock clock;

    BenchController(Lamps lamps, Meters meters, BenchFitting fitting, BenchKeeping keeping, Clock clock) {
        this.lamps = lamps;
        this.meters = meters;
        this.fitting = fitting;
        this.keeping = keeping;
        this.clock = clock;
    }

    @ModelAttribute("lamp")
    LampFacts lamp(@AuthenticationPrincipal SignedIn me, @PathVariable long lampId) {
        return lamps.get(me.siteId(), lampId);
    }

    @ModelAttribute("quantities")
    List<Quantity> quantities() {
        return LampOutput.QUANTITIES;
    }

    @ModelAttribute("meters")
    List<MeterFacts> meters(@AuthenticationPrincipal SignedIn me) {
        return meters.inUse(me.siteId()).stream()
                .filter(meter -> LampOutput.QUANTITIES.contains(meter.quantity()))
                .toList();
    }

    /** Whoever holds a meter into a lamp stands in its light and beside what is hot. */
    @ModelAttribute("cautions")
    Set<Caution> cautions(@ModelAttribute(name = "lamp", binding = false) LampFacts lamp) {
        Set<Caution> cautions = EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT);
        cautions.addAll(lamp.model().cautions());
        return cautions;
    }

    @GetMapping
    String fresh(@AuthenticationPrincipal SignedIn me, Model model) {
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), me.zone()).truncatedTo(ChronoUnit.MINUTES);
        model.addAttribute("form", BenchForm.empty(now.toString()));
        return PAGE;
    }

    /** Shows the fit of what was typed; where it says so the fit is kept. */
    @PostMapping
    String read(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "lamp", binding = false) LampFacts lamp,
            @ModelAttribute(name = "meters", binding = false) List<MeterFacts> known,
            @ModelAttribute("form") BenchForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "") String keep,
            Model model) {
        Optional<BenchEntry> entry = new BenchTyping(form, known, errors).read(When.until(clock.instant(), me.zone()));
        if (entry.isPresent() && !BenchFitting.isOutside(lamp, entry.get())) {
            errors.rejectValue("distances[0]", "bench.inside");
        }
        if (errors.hasErrors() || entry.isEmpty()) {
            return PAGE;
        }
        Optional<BenchFit> fit = fitting.of(lamp, entry.get(), me.zone());
        if (fit.isEmpty()) {
            errors.reject(BenchFitting.isPossible(lamp) ? "bench.unfitted" : "bench.shape");
            return PAGE;
        }
        model.addAttribute("bench", fit.get());
        return keep.isEmpty() ? PAGE : kept(me, lamp, entry.get(), fit.get(), errors);
    }

    private String kept(SignedIn me, LampFacts lamp, BenchEntry entry, BenchFit fit, BindingResult errors) {
        try {
            keeping.keep(me, lamp.id(), entry, fit.output());
            return "redirect:/lamps/" + lamp.id();
        } catch (ConflictException other) {
            errors.rejectValue("measuredAt", "lamp.measured.contradicts");
            return PAGE;
        }
    }
}
