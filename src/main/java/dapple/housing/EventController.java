package dapple.housing;

import dapple.animal.AnimalDetails;
import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Counting;
import dapple.animal.Happened;
import dapple.animal.Happening;
import dapple.animal.Refusal;
import dapple.animal.RefusedException;
import dapple.animal.Split;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.TakenException;
import dapple.site.When;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
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
import org.springframework.web.bind.annotation.RequestParam;

/** Enters what happened to an animal or a group: birth, death, recount, split, merge, departure. */
@Controller
@Allowed(Action.KEEP_ANIMALS)
@RequestMapping("/animals/{animalId}/events/new")
class EventController {
    private static final String PAGE = "housing/event";

    private final Animals animals;
    private final Counting counting;
    private final Clock clock;

    EventController(Animals animals, Counting counting, Clock clock) {
        this.animals = animals;
        this.counting = counting;
        this.clock = clock;
    }

    @ModelAttribute("animal")
    AnimalDetails animal(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return animals.details(me.siteId(), animalId);
    }

    @ModelAttribute("count")
    int count(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return animals.counts(me.siteId(), List.of(animalId), clock.instant()).getOrDefault(animalId, 0);
    }

    /** The open groups of its species that it can join. */
    @ModelAttribute("groups")
    List<AnimalFacts> groups(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "animal", binding = false) AnimalDetails animal) {
        return animals.here(me.siteId()).stream()
                .filter(AnimalFacts::isGroup)
                .filter(group -> group.speciesId() == animal.facts().speciesId() && group.id() != animal.id())
                .toList();
    }

    @ModelAttribute("kinds")
    List<Happening> kinds(@ModelAttribute(name = "animal", binding = false) AnimalDetails animal) {
        return EventForm.kinds(animal);
    }

    /** The kind that the address names, else the first that such a record can have. */
    @ModelAttribute("kind")
    Happening kind(
            @ModelAttribute(name = "animal", binding = false) AnimalDetails animal,
            @RequestParam(defaultValue = "") String kind) {
        List<Happening> possible = EventForm.kinds(animal);
        return possible.stream()
                .filter(one -> one.name().equals(kind))
                .findFirst()
                .orElse(possible.get(0));
    }

    @GetMapping
    String fresh(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "kind", binding = false) Happening kind,
            Model model) {
        LocalDateTime now = LocalDateTime.now(clock.withZone(me.zone())).truncatedTo(ChronoUnit.MINUTES);
        model.addAttribute("form", EventForm.empty(kind, now));
        return PAGE;
    }

    @PostMapping
    String enter(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "animal", binding = false) AnimalDetails animal,
            @Valid @ModelAttribute("form") EventForm form,
            BindingResult errors) {
        Optional<Instant> at = check(me, animal, form, errors);
        if (errors.hasErrors() || at.isEmpty()) {
            return PAGE;
        }
        try {
            return "redirect:/animals/" + store(me, animal, form, at.get());
        } catch (TakenException taken) {
            errors.rejectValue("accessionNumber", "animal.accession.taken");
        } catch (RefusedException refused) {
            errors.rejectValue(field(refused.refusal(), animal, form), refused.message(), refused.arguments(), null);
        }
        return PAGE;
    }

    private Optional<Instant> check(SignedIn me, AnimalDetails animal, EventForm form, BindingResult errors) {
        if (errors.getTarget() == null) {
            return Optional.empty();
        }
        form.check(animal, errors);
        return When.until(clock.instant(), me.zone()).read("at", form.at(), form.atWhich(), errors);
    }

    /** The record to show next: what left, the group that was joined, or the same. */
    private long store(SignedIn me, AnimalDetails animal, EventForm form, Instant at) {
        Happened how = new Happened(at, form.reason().strip(), Given.of(form.key()), me.personId());
        switch (Given.of(form.kind())) {
            case SPLIT_OFF -> {
                return counting.split(me.siteId(), split(animal, form), how);
            }
            case JOINED -> {
                counting.join(me.siteId(), animal.id(), Given.of(form.groupId()), how);
                return Given.of(form.groupId());
            }
            default -> counting.record(me.siteId(), animal.id(), Given.of(form.kind()), form.count(animal), how);
        }
        return animal.id();
    }

    private static Split split(AnimalDetails animal, EventForm form) {
        return new Split(
                animal.id(),
                Given.of(form.newKind()),
                Given.of(form.accessionNumber()).strip(),
                Given.of(form.name()).strip(),
                form.count(animal));
    }

    /** Where the form shows it. */
    private static String field(Refusal refusal, AnimalDetails animal, EventForm form) {
        boolean asksNumber = animal.isGroup() && form.kind() != Happening.JOINED;
        return switch (refusal) {
            case COUNT -> asksNumber ? "number" : "at";
            case OTHER_SPECIES, NO_GROUP, SAME_RECORD -> "groupId";
            case HAS_ENDED, UNDER_ORDER -> "kind";
            default -> "at";
        };
    }
}
