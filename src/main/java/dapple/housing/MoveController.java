package dapple.housing;

import dapple.animal.Animals;
import dapple.animal.Move;
import dapple.animal.Moving;
import dapple.animal.Refusal;
import dapple.animal.RefusedException;
import dapple.animal.StayFacts;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.order.NeedsConflict;
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
import java.util.List;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Moves animals and groups from one place to an enclosure. */
@Controller
@Allowed(Action.KEEP_ANIMALS)
@RequestMapping("/animals/moves/new")
class MoveController {
    private static final String PAGE = "housing/move";

    private final MoveChoices choices;
    private final Moving moving;
    private final Animals animals;
    private final Enclosures enclosures;
    private final Clock clock;

    MoveController(MoveChoices choices, Moving moving, Animals animals, Enclosures enclosures, Clock clock) {
        this.choices = choices;
        this.moving = moving;
        this.animals = animals;
        this.enclosures = enclosures;
        this.clock = clock;
    }

    @ModelAttribute("enclosures")
    List<EnclosureFacts> enclosures(@AuthenticationPrincipal SignedIn me) {
        return enclosures.inWalkingOrder(me.siteId());
    }

    @ModelAttribute("choices")
    List<MoveChoice> choices(
            @AuthenticationPrincipal SignedIn me,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String animal) {
        return choices.at(me.siteId(), place(me, from, animal), clock.instant());
    }

    /** The enclosure that is named, or that in which the named animal is. */
    private Optional<Long> place(SignedIn me, String from, String animal) {
        if (Asked.id(animal) == 0) {
            return Optional.of(Asked.id(from)).filter(id -> id != 0);
        }
        long id = animals.get(me.siteId(), Asked.id(animal)).id();
        return Optional.ofNullable(
                        animals.presentStays(me.siteId(), List.of(id)).get(id))
                .map(StayFacts::enclosureId);
    }

    @GetMapping
    String fresh(
            @AuthenticationPrincipal SignedIn me,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String animal,
            Model model) {
        long place = place(me, from, animal).orElse(0L);
        List<Long> chosen = Asked.id(animal) == 0 ? List.of() : List.of(Asked.id(animal));
        LocalDateTime now = LocalDateTime.now(clock.withZone(me.zone())).truncatedTo(ChronoUnit.MINUTES);
        model.addAttribute("form", MoveForm.of(place, chosen, now));
        model.addAttribute("from", place);
        return PAGE;
    }

    @PostMapping
    String move(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "choices", binding = false) List<MoveChoice> found,
            @RequestParam(defaultValue = "") String from,
            @Valid @ModelAttribute("form") MoveForm form,
            BindingResult errors,
            Model model) {
        model.addAttribute("from", Asked.id(from));
        Optional<Instant> at = check(me, form, found, errors);
        if (errors.hasErrors() || at.isEmpty() || !accepted(me, form, found, model)) {
            return PAGE;
        }
        try {
            moving.move(me.siteId(), of(me, form, at.get()));
            return "redirect:/animals?shown=HERE&enclosure=" + form.to();
        } catch (RefusedException refused) {
            errors.rejectValue(field(refused.refusal()), refused.message(), refused.arguments(), null);
            return PAGE;
        }
    }

    private Optional<Instant> check(SignedIn me, MoveForm form, List<MoveChoice> found, BindingResult errors) {
        if (errors.getTarget() == null) {
            return Optional.empty();
        }
        boolean missing =
                chosen(form, found).stream().anyMatch(choice -> choice.target().isEmpty());
        if (missing && !form.acceptsNoTarget()) {
            errors.rejectValue("withoutTarget", "move.no-target.needed");
        }
        return When.until(clock.instant(), me.zone()).read("at", form.at(), form.atWhich(), errors);
    }

    /** Warns of new neighbours; only what was shown can be accepted. */
    private boolean accepted(SignedIn me, MoveForm form, List<MoveChoice> found, Model model) {
        List<NeedsConflict> conflicts = choices.conflicts(me.siteId(), chosen(form, found), form, clock.instant());
        String key = NeedsConflict.key(conflicts);
        model.addAttribute("conflicts", conflicts);
        model.addAttribute("conflictsKey", key);
        return conflicts.isEmpty() || key.equals(form.despite());
    }

    private static List<MoveChoice> chosen(MoveForm form, List<MoveChoice> found) {
        return found.stream()
                .filter(choice -> form.chosen().contains(choice.animal().id()))
                .toList();
    }

    private static Move of(SignedIn me, MoveForm form, Instant at) {
        return new Move(
                form.chosen(),
                form.fromEnclosure(),
                Given.of(form.to()),
                at,
                form.reason().strip(),
                me.personId());
    }

    private static String field(Refusal refusal) {
        return switch (refusal) {
            case OUT_OF_USE, ALREADY_THERE -> "to";
            case MOVED_LATER, NOT_HERE_THEN -> "at";
            default -> "animalIds";
        };
    }
}
