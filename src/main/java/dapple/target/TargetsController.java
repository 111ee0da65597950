package dapple.target;

import dapple.evidence.EvidenceKeeping;
import dapple.light.judging.State;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.species.Library;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/** The species of a site with their targets, and one species with all that its target rests on. */
@Controller
@Allowed(Action.SEE_STOCK)
@RequestMapping("/targets")
class TargetsController {
    private final SpeciesKeeping species;
    private final EvidenceKeeping evidence;
    private final Targets targets;
    private final TargetList list;
    private final Library library;
    private final People people;

    TargetsController(
            SpeciesKeeping species,
            EvidenceKeeping evidence,
            Targets targets,
            TargetList list,
            Library library,
            People people) {
        this.species = species;
        this.evidence = evidence;
        this.targets = targets;
        this.list = list;
        this.library = library;
        this.people = people;
    }

    @ModelAttribute("noTarget")
    State noTarget() {
        return State.NO_TARGET;
    }

    @GetMapping
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("rows", list.all(me.siteId()));
        model.addAttribute("people", people.names(me.siteId()));
        return "target/targets";
    }

    @GetMapping("/{speciesId}")
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long speciesId, Model model) {
        SpeciesFacts found = species.get(me.siteId(), speciesId);
        model.addAttribute("species", found);
        model.addAttribute("names", species.names(me.siteId(), speciesId));
        model.addAttribute("taxon", library.find(found.scientificName()));
        model.addAttribute("versions", targets.versions(me.siteId(), speciesId));
        model.addAttribute("evidence", evidence.of(me.siteId(), speciesId));
        model.addAttribute("choices", evidence.choices(me.siteId(), speciesId));
        model.addAttribute("people", people.names(me.siteId()));
        return "target/species";
    }
}
