package dapple.commissioning;

import dapple.commissioning.Trials.Opened;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.Given;
import dapple.site.NotFoundException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
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

/** The rig of an enclosure before it goes live: what to read, what was read, and whether it is accepted. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}/commissioning")
class CommissioningController {
    private final Trials trials;
    private final Accepting accepting;
    private final Accepted accepted;
    private final CommissioningPage page;

    CommissioningController(Trials trials, Accepting accepting, Accepted accepted, CommissioningPage page) {
        this.trials = trials;
        this.accepting = accepting;
        this.accepted = accepted;
        this.page = page;
    }

    @GetMapping
    String show(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam(defaultValue = "") String quantity,
            Model model) {
        Opened opened = trials.openWithoutResidents(me, enclosureId);
        opened.trial().ifPresent(trial -> model.addAttribute("form", AcceptForm.of(trial)));
        return page.show(me, opened, quantity, model);
    }

    /** One quantity on the map, as it is stated and as it is measured. */
    @GetMapping("/map")
    String map(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam(defaultValue = "") String quantity,
            Model model) {
        return page.map(me, trials.open(me, enclosureId), quantity, model);
    }

    /** What to read, to take along on paper. */
    @GetMapping("/sheet")
    String sheet(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        return page.sheet(me, trials.openWithoutResidents(me, enclosureId), model);
    }

    @PostMapping
    @Allowed(Action.CHANGE_RIGS)
    String accept(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @Valid @ModelAttribute("form") AcceptForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Opened opened = trials.open(me, enclosureId);
        Trial trial = opened.trial().orElseThrow(NotFoundException::new);
        if (errors.hasErrors()) {
            return page.show(me, opened, "", model);
        }
        if (isDone(me, enclosureId, form)) {
            return "redirect:/enclosures/" + enclosureId + "/commissioning";
        }
        if (!trial.seen().equals(form.seen())) {
            return stale(me, opened, model, response);
        }
        try {
            Acceptance acceptance = new Acceptance(
                    me, trial, Given.of(form.key()), form.reason().strip());
            accepting.accept(acceptance, page.source(me, trial));
            return "redirect:/enclosures/" + enclosureId + "/commissioning";
        } catch (RefusedAcceptance refused) {
            errors.rejectValue("reason", "commissioning.refused." + refused.reason());
            return page.show(me, opened, "", model);
        } catch (ConflictException changed) {
            return stale(me, trials.open(me, enclosureId), model, response);
        }
    }

    private boolean isDone(SignedIn me, long enclosureId, AcceptForm form) {
        return accepted.enclosureOf(me.siteId(), Given.of(form.key()))
                .filter(there -> there == enclosureId)
                .isPresent();
    }

    private String stale(SignedIn me, Opened opened, Model model, HttpServletResponse response) {
        model.addAttribute("stale", true);
        response.setStatus(HttpServletResponse.SC_CONFLICT);
        return page.show(me, opened, "", model);
    }
}
