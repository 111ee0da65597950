package dapple.lamp;

import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.When;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** What was measured of one lamp is entered here, and taken back where it was wrong. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamps/{lampId}/outputs")
class LampOutputController {
    private final Lamps lamps;
    private final LampMeasuring measuring;
    private final Clock clock;

    LampOutputController(Lamps lamps, LampMeasuring measuring, Clock clock) {
        this.lamps = lamps;
        this.measuring = measuring;
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

    @GetMapping("/new")
    String fresh(@AuthenticationPrincipal SignedIn me, Model model) {
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), me.zone()).truncatedTo(ChronoUnit.MINUTES);
        model.addAttribute("form", MeasureForm.empty(now));
        return "lamp/output-new";
    }

    @PostMapping("/new")
    String record(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long lampId,
            @Valid @ModelAttribute("form") MeasureForm form,
            BindingResult errors) {
        When when = When.until(clock.instant(), me.zone());
        Optional<Instant> at = when.read("measuredAt", form.measuredAt(), form.measuredAtWhich(), errors);
        if (form.isOfAnotherQuantity()) {
            errors.rejectValue("quantity", "lamp.quantity.other");
        }
        if (errors.hasErrors() || at.isEmpty()) {
            return "lamp/output-new";
        }
        if (measuring.record(me.siteId(), lampId, form.output(), at.get(), me.personId())
                instanceof LampMeasuring.Outcome.Contradicts) {
            errors.rejectValue("measuredAt", "lamp.measured.contradicts");
            return "lamp/output-new";
        }
        return "redirect:/lamps/" + lampId;
    }

    @GetMapping("/{outputId}/withdrawal")
    String ask(
            @AuthenticationPrincipal SignedIn me, @PathVariable long lampId, @PathVariable long outputId, Model model) {
        model.addAttribute("output", measuring.get(me.siteId(), lampId, outputId));
        model.addAttribute("form", new WithdrawalForm(""));
        return "lamp/withdrawal";
    }

    @PostMapping("/{outputId}/withdrawal")
    String withdraw(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long lampId,
            @PathVariable long outputId,
            @Valid @ModelAttribute("form") WithdrawalForm form,
            BindingResult errors,
            Model model) {
        model.addAttribute("output", measuring.get(me.siteId(), lampId, outputId));
        if (errors.hasErrors()) {
            return "lamp/withdrawal";
        }
        measuring.withdraw(
                me.siteId(), lampId, outputId, me.personId(), form.reason().strip());
        return "redirect:/lamps/" + lampId;
    }
}
