package dapple.people;

import jakarta.validation.Valid;
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

    PeopleController(People people) {
        this.people = people;
    }

    @ModelAttribute("allRoles")
    Role[] allRoles() {
        return Role.values();
    }

    @GetMapping
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("people", people.at(me.siteId()));
        return "people/list";
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
