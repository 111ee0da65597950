package dapple.species;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
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

/** The names of one species. */
@Controller
@Allowed(Action.SET_TARGETS)
@RequestMapping("/targets/{speciesId}/name")
class SpeciesController {
    private final SpeciesKeeping species;

    SpeciesController(SpeciesKeeping species) {
        this.species = species;
    }

    @ModelAttribute("species")
    SpeciesFacts species(@AuthenticationPrincipal SignedIn me, @PathVariable long speciesId) {
        return species.get(me.siteId(), speciesId);
    }

    @GetMapping
    String page(@ModelAttribute("species") SpeciesFacts now, Model model) {
        model.addAttribute("form", SpeciesForm.of(now));
        return "species/name";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String rename(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long speciesId,
            @Valid @ModelAttribute("form") SpeciesForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (errors.hasErrors()) {
            return "species/name";
        }
        try {
            species.rename(me.siteId(), speciesId, form.versionSeen(), form.name());
            return "redirect:/targets/" + speciesId;
        } catch (TakenException taken) {
            errors.rejectValue("scientificName", "species.name.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            SpeciesFacts now = species.get(me.siteId(), speciesId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "species/name";
    }
}
