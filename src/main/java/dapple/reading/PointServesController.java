package dapple.reading;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Which species a measuring point serves: in a mixed enclosure each has its own niche. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}/points/{pointId}/serves")
class PointServesController {
    private final Enclosures enclosures;
    private final Targets targets;

    PointServesController(Enclosures enclosures, Targets targets) {
        this.enclosures = enclosures;
        this.targets = targets;
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

    @GetMapping
    String page(@ModelAttribute(name = "point", binding = false) PointFacts point, Model model) {
        model.addAttribute("form", ServesForm.of(point.serves()));
        return "reading/serves";
    }

    /** A form made from an older state comes back with 409 and both states on it. */
    @PostMapping
    String change(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "point", binding = false) PointFacts point,
            @ModelAttribute(name = "kinds", binding = false) List<SpeciesFacts> kinds,
            @Valid @ModelAttribute("form") ServesForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Set<Long> known = kinds.stream().map(SpeciesFacts::id).collect(Collectors.toSet());
        if (!errors.hasErrors() && !known.containsAll(form.chosen())) {
            errors.rejectValue("species", "serves.wrong");
        }
        if (errors.hasErrors()) {
            return "reading/serves";
        }
        if (!form.isMadeFrom(point.serves())) {
            model.addAttribute(
                    "theirs",
                    kinds.stream()
                            .filter(kind -> point.serves().contains(kind.id()))
                            .toList());
            model.addAttribute("form", form.on(point.serves()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return "reading/serves";
        }
        enclosures.serve(me.siteId(), point.id(), form.chosen());
        return "redirect:/enclosures/" + point.enclosureId() + "/points/" + point.id();
    }
}
