package dapple.review;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.PersonFacts;
import dapple.people.SignedIn;
import dapple.rig.Rigs;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** One finding: what was decided about it, and the form to decide. */
@Controller
@Allowed(Action.SEE_REVIEW)
@RequestMapping("/review/{enclosureId}")
class FindingController {
    private final Desks desks;
    private final Deciding deciding;
    private final People people;
    private final Rigs rigs;
    private final Clock clock;

    FindingController(Desks desks, Deciding deciding, People people, Rigs rigs, Clock clock) {
        this.desks = desks;
        this.deciding = deciding;
        this.people = people;
        this.rigs = rigs;
        this.clock = clock;
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        model.addAttribute("form", DecisionForm.empty());
        return page(me, enclosureId, model, desks.found(me, enclosureId));
    }

    @PostMapping
    @Allowed(Action.DECIDE_FINDINGS)
    String decide(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @Valid @ModelAttribute("form") DecisionForm form,
            BindingResult errors,
            Model model) {
        form.check(LocalDate.ofInstant(clock.instant(), me.zone()), errors);
        if (!errors.hasErrors()) {
            try {
                deciding.decide(me, enclosureId, form.decision());
                return "redirect:/review/" + enclosureId;
            } catch (RefusedDecision refused) {
                errors.rejectValue(
                        "kind", "decision.refused." + refused.reason().name().toLowerCase(Locale.ROOT));
            }
        }
        return page(me, enclosureId, model, desks.found(me, enclosureId));
    }

    private String page(SignedIn me, long enclosureId, Model model, Found found) {
        List<PersonFacts> team = people.at(me.siteId());
        model.addAttribute("found", found);
        model.addAttribute("kinds", DecisionKind.values());
        model.addAttribute("team", team.stream().filter(PersonFacts::isActive).toList());
        model.addAttribute("names", People.namesOf(team));
        model.addAttribute("today", LocalDate.ofInstant(clock.instant(), me.zone()));
        model.addAttribute("changes", rigs.lastChanges(me.siteId()));
        model.addAttribute("decisions", deciding.of(me.siteId(), enclosureId));
        return "review/finding";
    }
}
