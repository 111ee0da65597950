package dapple.people;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The people of a site, for its administrators. */
@Controller
@Allowed(Action.MANAGE_PEOPLE)
@RequestMapping("/people")
class PeopleController {
    private final People people;
    private final Clock clock;

    PeopleController(People people, Clock clock) {
        this.people = people;
        this.clock = clock;
    }

    @ModelAttribute("allRoles")
    Role[] allRoles() {
        return Role.values();
    }

    @GetMapping
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        List<PersonFacts> all = people.at(me.siteId());
        model.addAttribute("people", all);
        model.addAttribute("ending", ending(all));
        model.addAttribute("today", LocalDate.ofInstant(clock.instant(), me.zone()));
        return "people/list";
    }

    /** Those whose access has a last day, soonest first. */
    private static List<PersonFacts> ending(List<PersonFacts> all) {
        return all.stream()
                .filter(person -> person.isActive() && person.lastDay().isPresent())
                .sorted(Comparator.comparing(person -> person.lastDay().orElseThrow()))
                .toList();
    }

    @GetMapping("/new")
    String fresh(Model model) {
        model.addAttribute("form", NewPersonForm.empty());
        return "people/new";
    }

    @PostMapping("/new")
    String add(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") NewPersonForm form,
            BindingResult errors) {
        if (!errors.hasErrors() && people.isTaken(form.signInName())) {
            errors.rejectValue("signInName", "people.sign-in-name.taken");
        }
        if (errors.hasErrors()) {
            return "people/new";
        }
        people.add(me.siteId(), form.person(), form.roles(), form.lastDay());
        return "redirect:/people";
    }
}
