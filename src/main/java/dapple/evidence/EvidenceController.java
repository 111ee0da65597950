package dapple.evidence;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.SourceMark;
import dapple.site.TakenException;
import dapple.species.Library;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import dapple.species.UvZone;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The evidence about one species' zone: rows are added and one of them is chosen. */
@Controller
@Allowed(Action.SET_TARGETS)
@RequestMapping("/targets/{speciesId}/evidence")
class EvidenceController {
    private static final String PAGE = "evidence/evidence";

    private final SpeciesKeeping species;
    private final EvidenceKeeping evidence;
    private final Library library;
    private final People people;

    EvidenceController(SpeciesKeeping species, EvidenceKeeping evidence, Library library, People people) {
        this.species = species;
        this.evidence = evidence;
        this.library = library;
        this.people = people;
    }

    @ModelAttribute("species")
    SpeciesFacts species(@AuthenticationPrincipal SignedIn me, @PathVariable long speciesId) {
        return species.get(me.siteId(), speciesId);
    }

    @ModelAttribute("zones")
    List<UvZone> zones() {
        return UvZone.usual();
    }

    @ModelAttribute("allMarks")
    List<SourceMark> marks() {
        return List.of(SourceMark.values());
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long speciesId, Model model) {
        model.addAttribute("form", EvidenceForm.empty());
        model.addAttribute("choice", ChoiceForm.after(record(me.siteId(), speciesId, model)));
        return PAGE;
    }

    @PostMapping
    String add(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long speciesId,
            @Valid @ModelAttribute("form") EvidenceForm form,
            BindingResult errors,
            Model model) {
        Optional<UvZone> zone = Optional.ofNullable(form.zone()).flatMap(UvZone::withCode);
        if (zone.isEmpty() && !errors.hasFieldErrors("zone")) {
            errors.rejectValue("zone", "evidence.zone.choose");
        }
        if (!errors.hasErrors()) {
            try {
                evidence.add(me.siteId(), form.evidence(speciesId, zone.orElseThrow(), me.personId()));
                return "redirect:/targets/" + speciesId + "/evidence";
            } catch (TakenException taken) {
                errors.rejectValue("source", "evidence.taken");
            }
        }
        model.addAttribute("choice", ChoiceForm.after(record(me.siteId(), speciesId, model)));
        return PAGE;
    }

    /** Of two who choose at once the second gets 409, with the choice of the first and what was typed. */
    @PostMapping("/choice")
    String choose(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long speciesId,
            @Valid @ModelAttribute("choice") ChoiceForm choice,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        model.addAttribute("form", EvidenceForm.empty());
        if (errors.hasErrors()) {
            record(me.siteId(), speciesId, model);
            return PAGE;
        }
        try {
            evidence.choose(me.siteId(), choice.choice(speciesId, me.personId()));
            return "redirect:/targets/" + speciesId;
        } catch (ConflictException chosenMeanwhile) {
            int holding = record(me.siteId(), speciesId, model);
            model.addAttribute("stale", true);
            model.addAttribute("choice", choice.onChoice(holding));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return PAGE;
        }
    }

    /** What is on record, and the number of the choice that holds; 0 for none. */
    private int record(long siteId, long speciesId, Model model) {
        List<ChoiceFacts> choices = evidence.choices(siteId, speciesId);
        model.addAttribute("rows", evidence.of(siteId, speciesId));
        model.addAttribute("choices", choices);
        model.addAttribute("people", people.names(siteId));
        model.addAttribute("taxon", library.find(species.get(siteId, speciesId).scientificName()));
        return choices.isEmpty() ? 0 : choices.get(0).number();
    }
}
