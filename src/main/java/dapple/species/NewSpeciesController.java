package dapple.species;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Enters a species, with the names that the library knows near what was typed. */
@Controller
@Allowed(Action.SET_TARGETS)
@RequestMapping("/targets/new")
class NewSpeciesController {
    private final SpeciesKeeping species;
    private final Library library;

    NewSpeciesController(SpeciesKeeping species, Library library) {
        this.species = species;
        this.library = library;
    }

    /** Empty, or with the names of a row of the library. */
    @GetMapping
    String fresh(@RequestParam(defaultValue = "") String from, Model model) {
        SpeciesName name = library.find(from).map(Taxon::name).orElse(new SpeciesName("", ""));
        model.addAttribute("form", SpeciesForm.of(name));
        return "species/new";
    }

    @PostMapping
    String add(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") SpeciesForm form,
            BindingResult errors,
            Model model) {
        if (errors.hasErrors()) {
            return "species/new";
        }
        List<Taxon> near = library.near(form.name().scientific());
        if (!form.isMeantAsTyped() && !near.isEmpty()) {
            errors.rejectValue("scientificName", "species.near");
            model.addAttribute("near", near);
            return "species/new";
        }
        try {
            return "redirect:/targets/" + species.add(me.siteId(), form.name()).id();
        } catch (TakenException taken) {
            errors.rejectValue("scientificName", "species.name.taken");
            return "species/new";
        }
    }
}
