package dapple.animal;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
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

/** Changes what is said of an animal or a group. */
@Controller
@Allowed(Action.KEEP_ANIMALS)
@RequestMapping("/animals/{animalId}/edit")
class AnimalEditController {
    private static final String PAGE = "animal/edit";

    private final Animals animals;
    private final AnimalKeeping keeping;
    private final Targets targets;
    private final Clock clock;

    AnimalEditController(Animals animals, AnimalKeeping keeping, Targets targets, Clock clock) {
        this.animals = animals;
        this.keeping = keeping;
        this.targets = targets;
        this.clock = clock;
    }

    @ModelAttribute("animal")
    AnimalDetails animal(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return animals.details(me.siteId(), animalId);
    }

    @ModelAttribute("species")
    List<SpeciesFacts> species(@AuthenticationPrincipal SignedIn me) {
        return NewAnimalController.byName(targets, me.siteId());
    }

    @GetMapping
    String page(@ModelAttribute("animal") AnimalDetails animal, Model model) {
        model.addAttribute("form", AnimalForm.of(animal));
        return PAGE;
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @Valid @ModelAttribute("form") AnimalForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (errors.getTarget() != null) {
            form.check(errors, LocalDate.now(clock.withZone(me.zone())));
        }
        if (errors.hasErrors()) {
            return PAGE;
        }
        try {
            store(me, animalId, form);
            return "redirect:/animals/" + animalId;
        } catch (TakenException taken) {
            errors.rejectValue("accessionNumber", "animal.accession.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            AnimalDetails now = animals.details(me.siteId(), animalId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return PAGE;
    }

    private void store(SignedIn me, long animalId, AnimalForm form) {
        keeping.change(me.siteId(), animalId, form.versionSeen(), form.state());
        form.length().ifPresent(length -> keeping.addLength(me.siteId(), animalId, length, me.personId()));
    }
}
