package dapple.reading;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Served;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Which species and single animals a measuring point serves: in a shared enclosure each may have its own niche. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}/points/{pointId}/serves")
class PointServesController {
    private final Enclosures enclosures;
    private final Targets targets;
    private final Animals animals;
    private final Clock clock;

    PointServesController(Enclosures enclosures, Targets targets, Animals animals, Clock clock) {
        this.enclosures = enclosures;
        this.targets = targets;
        this.animals = animals;
        this.clock = clock;
    }

    @ModelAttribute("enclosure")
    EnclosureFacts enclosure(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return enclosures.get(me.siteId(), enclosureId);
    }

    @ModelAttribute("point")
    PointFacts point(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, @PathVariable long pointId) {
        PointFacts found = enclosures.point(me.siteId(), pointId);
        if (found.enclosureId() != enclosureId) {
            throw new NotFoundException();
        }
        return found;
    }

    @ModelAttribute("kinds")
    List<SpeciesFacts> kinds(@AuthenticationPrincipal SignedIn me) {
        return targets.speciesById(me.siteId()).values().stream()
                .sorted(Comparator.comparing(SpeciesFacts::scientificName))
                .toList();
    }

    @ModelAttribute("choices")
    List<Choice> choices(
            @AuthenticationPrincipal SignedIn me, @ModelAttribute(name = "point", binding = false) PointFacts point) {
        List<AnimalFacts> here = animals.inEnclosure(me.siteId(), point.enclosureId(), clock.instant());
        Set<Long> living = here.stream().map(AnimalFacts::id).collect(Collectors.toSet());
        Stream<Choice> left = point.served().animalIds().stream()
                .filter(id -> !living.contains(id))
                .sorted()
                .map(id -> new Choice(animals.get(me.siteId(), id), false));
        return Stream.concat(here.stream().map(animal -> new Choice(animal, true)), left)
                .toList();
    }

    @GetMapping
    String page(@ModelAttribute(name = "point", binding = false) PointFacts point, Model model) {
        model.addAttribute("form", ServesForm.of(point.served()));
        return "reading/serves";
    }

    /** A form made from an older state comes back with 409 and both states on it. */
    @PostMapping
    String change(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "point", binding = false) PointFacts point,
            @ModelAttribute(name = "kinds", binding = false) List<SpeciesFacts> kinds,
            @ModelAttribute(name = "choices", binding = false) List<Choice> choices,
            @Valid @ModelAttribute("form") ServesForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (!errors.hasErrors()) {
            check(form.chosen(), kinds, choices, errors);
        }
        if (errors.hasErrors()) {
            return "reading/serves";
        }
        if (!form.isMadeFrom(point.served())) {
            model.addAttribute("theirs", point.served());
            model.addAttribute("form", form.on(point.served()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return "reading/serves";
        }
        enclosures.serve(me.siteId(), point.id(), form.chosen());
        return "redirect:/enclosures/" + point.enclosureId() + "/points/" + point.id();
    }

    private static void check(Served chosen, List<SpeciesFacts> kinds, List<Choice> choices, BindingResult errors) {
        if (!kinds.stream().map(SpeciesFacts::id).collect(Collectors.toSet()).containsAll(chosen.speciesIds())) {
            errors.rejectValue("species", "serves.wrong");
        }
        if (!choices.stream().map(Choice::id).collect(Collectors.toSet()).containsAll(chosen.animalIds())) {
            errors.rejectValue("animals", "serves.wrong");
        }
    }

    /**
     * An animal that may be named.
     *
     * @param here whether it lives in the enclosure now; one that has left is named until somebody takes it away
     */
    record Choice(AnimalFacts animal, boolean here) {
        long id() {
            return animal.id();
        }
    }
}
