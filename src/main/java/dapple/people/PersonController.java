package dapple.people;

import dapple.site.AuditedPart;
import dapple.site.AuditedThing;
import dapple.site.ConflictException;
import dapple.site.HistoryHead;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One person of a site, for its administrators: roles, deactivation, a reset of the password. */
@Controller
@Allowed(Action.MANAGE_PEOPLE)
@RequestMapping("/people/{personId}")
class PersonController {
    private final People people;
    private final Histories histories;

    PersonController(People people, Histories histories) {
        this.people = people;
        this.histories = histories;
    }

    @ModelAttribute("person")
    PersonFacts person(@AuthenticationPrincipal SignedIn me, @PathVariable long personId) {
        return people.get(me.siteId(), personId);
    }

    @ModelAttribute("allRoles")
    Role[] allRoles() {
        return Role.values();
    }

    @GetMapping
    String page(@ModelAttribute("person") PersonFacts person, Model model) {
        model.addAttribute("form", PersonForm.of(person));
        return "people/person";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long personId,
            @Valid @ModelAttribute("form") PersonForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (!errors.hasErrors() && me.personId() == personId && !form.roles().contains(Role.ADMINISTRATOR)) {
            errors.rejectValue("roles", "people.roles.own-administrator");
        }
        if (errors.hasErrors()) {
            return "people/person";
        }
        try {
            people.change(me.siteId(), personId, form.version(), form.change());
            return "redirect:/people";
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            PersonFacts now = people.get(me.siteId(), personId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return "people/person";
        }
    }

    @GetMapping({"/history", "/history.csv"})
    ModelAndView history(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "person", binding = false) PersonFacts person,
            @RequestParam(defaultValue = "1") int page) {
        AuditedThing thing = AuditedThing.of(Person.class, person.id())
                .with(new AuditedPart(Membership.class, "person", me.siteId()))
                .wording("role", "role.");
        HistoryHead head = new HistoryHead(person.name(), "people", "/people/" + person.id());
        return histories.show(me, head, thing, page);
    }

    @PostMapping("/deactivation")
    String deactivate(@AuthenticationPrincipal SignedIn me, @PathVariable long personId) {
        if (me.personId() == personId) {
            throw new ConflictException("nobody deactivates their own account");
        }
        people.deactivate(me.siteId(), personId);
        return "redirect:/people";
    }

    @PostMapping("/reactivation")
    String reactivate(@AuthenticationPrincipal SignedIn me, @PathVariable long personId) {
        people.reactivate(me.siteId(), personId);
        return "redirect:/people";
    }

    @PostMapping("/reset-code")
    String allowReset(@AuthenticationPrincipal SignedIn me, @PathVariable long personId, RedirectAttributes shown) {
        shown.addFlashAttribute("resetCode", people.allowReset(me.siteId(), personId));
        return "redirect:/people/" + personId;
    }
}
