package dapple.meter;

import dapple.light.metrology.Cause;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The uncertainty of a meter is stated here by its parts. */
@Controller
@Allowed(Action.KEEP_METERS)
@RequestMapping("/meters/{meterId}/uncertainty")
class BudgetController {
    private final MeterRegister meters;
    private final Budgets budgets;

    BudgetController(MeterRegister meters, Budgets budgets) {
        this.meters = meters;
        this.budgets = budgets;
    }

    /** A share of a temperature would say nothing: its zero is arbitrary. */
    @ModelAttribute("meter")
    MeterDetails meter(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        MeterDetails meter = meters.get(me.siteId(), meterId);
        if (meter.facts().quantity().isTemperature()) {
            throw new NotFoundException();
        }
        return meter;
    }

    @ModelAttribute("causes")
    List<Cause> causes() {
        return BudgetForm.CAUSES;
    }

    @ModelAttribute("kindsOfParts")
    UncertaintyKind[] kinds() {
        return UncertaintyKind.values();
    }

    @GetMapping
    String form(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId, Model model) {
        model.addAttribute("form", BudgetForm.of(budgets.of(me.siteId(), meterId)));
        return "meter/budget";
    }

    /** A form made from an older budget comes back with 409, both on it, and the newer one to save over. */
    @PostMapping
    String state(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "meter", binding = false) MeterDetails meter,
            @ModelAttribute("form") BudgetForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        long meterId = meter.facts().id();
        if (!errors.hasErrors()) {
            form.check(meter.state().resolution(), errors);
        }
        if (errors.hasErrors()) {
            return "meter/budget";
        }
        try {
            budgets.state(me.siteId(), new NewBudget(meterId, form.seen(), form.parts(), me.personId()));
            return "redirect:/meters/" + meterId;
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            Optional<BudgetFacts> now = budgets.of(me.siteId(), meterId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.on(now));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return "meter/budget";
        }
    }
}
