package dapple.housing;

import dapple.animal.AnimalDetails;
import dapple.animal.Animals;
import dapple.animal.Moving;
import dapple.animal.RefusedException;
import dapple.animal.StayCorrection;
import dapple.animal.StayRecord;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
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

/** Everything that was ever said of where an animal was; a wrong stay is withdrawn. */
@Controller
@Allowed(Action.SEE_ANIMALS)
@RequestMapping("/animals/{animalId}/stays")
class StaysController {
    private static final String CORRECTION = "housing/stay";

    private final Animals animals;
    private final Moving moving;
    private final Enclosures enclosures;
    private final People people;

    StaysController(Animals animals, Moving moving, Enclosures enclosures, People people) {
        this.animals = animals;
        this.moving = moving;
        this.enclosures = enclosures;
        this.people = people;
    }

    @ModelAttribute("animal")
    AnimalDetails animal(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return animals.details(me.siteId(), animalId);
    }

    @ModelAttribute("stays")
    List<StayRecord> stays(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return animals.stayRecord(me.siteId(), animalId);
    }

    @ModelAttribute("enclosures")
    Map<Long, EnclosureFacts> enclosures(@AuthenticationPrincipal SignedIn me) {
        return enclosures.all(me.siteId()).stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
    }

    @ModelAttribute("names")
    Map<Long, String> names(@AuthenticationPrincipal SignedIn me) {
        return people.names(me.siteId());
    }

    @GetMapping
    String page() {
        return "housing/stays";
    }

    @GetMapping("/{stayId}/correction")
    @Allowed(Action.KEEP_ANIMALS)
    String fresh(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long stayId,
            @ModelAttribute(name = "stays", binding = false) List<StayRecord> stays,
            Model model) {
        model.addAttribute("form", new StayCorrectionForm(null, ""));
        return correction(me, stayId, stays, model);
    }

    private String correction(SignedIn me, long stayId, List<StayRecord> stays, Model model) {
        model.addAttribute("stay", find(stayId, stays));
        model.addAttribute("places", enclosures.all(me.siteId()));
        return CORRECTION;
    }

    private static StayRecord find(long stayId, List<StayRecord> stays) {
        return stays.stream()
                .filter(one -> one.stay().id() == stayId)
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    @PostMapping("/{stayId}/correction")
    @Allowed(Action.KEEP_ANIMALS)
    String correct(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @PathVariable long stayId,
            @ModelAttribute(name = "stays", binding = false) List<StayRecord> stays,
            @Valid @ModelAttribute("form") StayCorrectionForm form,
            BindingResult errors,
            Model model) {
        correction(me, stayId, stays, model);
        if (errors.hasErrors()) {
            return CORRECTION;
        }
        try {
            moving.correct(
                    me.siteId(),
                    new StayCorrection(
                            animalId, stayId, form.instead(), form.reason().strip(), me.personId()));
            return "redirect:/animals/" + animalId + "/stays";
        } catch (RefusedException refused) {
            errors.rejectValue("enclosureId", refused.message(), refused.arguments(), null);
            return CORRECTION;
        }
    }
}
