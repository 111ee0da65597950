package dapple.practice;

import dapple.meter.MeterDetails;
import dapple.meter.MeterRegister;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import java.time.Instant;
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

/** Names the lamp that a meter is checked by every week. */
@Controller
@Allowed(Action.KEEP_METERS)
@RequestMapping("/meters/{meterId}/reference-lamp")
class ReferenceLampController {
    private final MeterRegister meters;
    private final PracticeLogging logging;
    private final Present present;

    ReferenceLampController(MeterRegister meters, PracticeLogging logging, Present present) {
        this.meters = meters;
        this.logging = logging;
        this.present = present;
    }

    @ModelAttribute("meter")
    MeterDetails meter(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        return meters.get(me.siteId(), meterId);
    }

    @GetMapping
    String fresh(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("form", ReferenceLampForm.empty(present.minute(me)));
        return "practice/reference-lamp";
    }

    @PostMapping
    String name(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long meterId,
            @Valid @ModelAttribute("form") ReferenceLampForm form,
            BindingResult errors) {
        Optional<Instant> at = present.when(me).read("at", form.at(), form.atWhich(), errors);
        if (errors.hasErrors() || at.isEmpty()) {
            return "practice/reference-lamp";
        }
        NewReferenceLamp named = new NewReferenceLamp(
                form.name().strip(), form.setUp().strip(), Given.number(form.firstAmount()), at.get());
        try {
            logging.nameLamp(present.entered(me, meterId, Given.of(form.key())), named);
            return "redirect:/meters/" + meterId + "/practice";
        } catch (TakenException taken) {
            errors.reject("practice.lamp.taken");
            return "practice/reference-lamp";
        }
    }
}
