package dapple.meter;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Histories;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.AuditedThing;
import dapple.site.HistoryHead;
import dapple.site.TakenException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** One meter: what is said of it, its calibrations, whether it is in use. */
@Controller
@RequestMapping("/meters/{meterId}")
class MeterController {
    private final MeterRegister meters;
    private final Certificates certificates;
    private final Budgets budgets;
    private final People people;
    private final Histories histories;

    MeterController(
            MeterRegister meters, Certificates certificates, Budgets budgets, People people, Histories histories) {
        this.meters = meters;
        this.certificates = certificates;
        this.budgets = budgets;
        this.people = people;
        this.histories = histories;
    }

    @ModelAttribute("meter")
    MeterDetails meter(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        return meters.get(me.siteId(), meterId);
    }

    @GetMapping
    @Allowed(Action.SEE_STOCK)
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId, Model model) {
        model.addAttribute("calibrations", certificates.of(me.siteId(), meterId));
        model.addAttribute("budget", budgets.of(me.siteId(), meterId));
        model.addAttribute("names", people.names(me.siteId()));
        return "meter/meter";
    }

    @GetMapping("/edit")
    @Allowed(Action.KEEP_METERS)
    String form(@ModelAttribute(name = "meter", binding = false) MeterDetails meter, Model model) {
        model.addAttribute("form", MeterForm.of(meter));
        return "meter/edit";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping("/edit")
    @Allowed(Action.KEEP_METERS)
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long meterId,
            @Valid @ModelAttribute("form") MeterForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (!errors.hasErrors()) {
            form.check(errors);
        }
        if (errors.hasErrors()) {
            return "meter/edit";
        }
        try {
            meters.change(me.siteId(), meterId, form.versionSeen(), form.change());
            return "redirect:/meters/" + meterId;
        } catch (TakenException taken) {
            errors.rejectValue("code", "meter.code.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            MeterDetails now = meters.get(me.siteId(), meterId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "meter/edit";
    }

    @PostMapping("/retirement")
    @Allowed(Action.KEEP_METERS)
    String retire(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        meters.retire(me.siteId(), meterId);
        return "redirect:/meters/" + meterId;
    }

    @PostMapping("/return")
    @Allowed(Action.KEEP_METERS)
    String returnToUse(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        meters.returnToUse(me.siteId(), meterId);
        return "redirect:/meters/" + meterId;
    }

    @GetMapping({"/history", "/history.csv"})
    @Allowed(Action.AUDIT)
    ModelAndView history(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "meter", binding = false) MeterDetails meter,
            @RequestParam(defaultValue = "1") int page) {
        MeterFacts facts = meter.facts();
        HistoryHead head = new HistoryHead(facts.code(), "meters", "/meters/" + facts.id());
        AuditedThing thing = AuditedThing.of(Meter.class, facts.id()).wording("quantity", "quantity.");
        return histories.show(me, head, thing, page);
    }
}
