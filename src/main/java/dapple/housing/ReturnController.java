package dapple.housing;

import dapple.animal.AnimalDetails;
import dapple.animal.Animals;
import dapple.animal.Counting;
import dapple.animal.Happened;
import dapple.animal.RefusedException;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.When;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Opens the closed record of an animal or a group that is here again. */
@Controller
@Allowed(Action.TAKE_ANIMALS_BACK)
@RequestMapping("/animals/{animalId}/return")
class ReturnController {
    private static final String PAGE = "housing/return";

    private final Animals animals;
    private final Counting counting;
    private final Clock clock;

    ReturnController(Animals animals, Counting counting, Clock clock) {
        this.animals = animals;
        this.counting = counting;
        this.clock = clock;
    }

    @ModelAttribute("animal")
    AnimalDetails animal(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return animals.details(me.siteId(), animalId);
    }

    @GetMapping
    String fresh(@AuthenticationPrincipal SignedIn me, Model model) {
        LocalDateTime now = LocalDateTime.now(clock.withZone(me.zone())).truncatedTo(ChronoUnit.MINUTES);
        model.addAttribute("form", new ReturnForm(UUID.randomUUID(), now, null, ""));
        return PAGE;
    }

    @PostMapping
    String takeBack(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @Valid @ModelAttribute("form") ReturnForm form,
            BindingResult errors) {
        Optional<Instant> at = errors.getTarget() == null
                ? Optional.empty()
                : When.until(clock.instant(), me.zone()).read("at", form.at(), form.atWhich(), errors);
        if (errors.hasErrors() || at.isEmpty()) {
            return PAGE;
        }
        try {
            counting.comeBack(
                    me.siteId(),
                    animalId,
                    new Happened(at.get(), form.reason().strip(), Given.of(form.key()), me.personId()));
            return "redirect:/animals/moves/new?animal=" + animalId;
        } catch (RefusedException refused) {
            errors.rejectValue("at", refused.message(), refused.arguments(), null);
            return PAGE;
        }
    }
}
