package dapple.animal;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.TakenException;
import dapple.site.When;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Enters an animal or a group. */
@Controller
@Allowed(Action.KEEP_ANIMALS)
@RequestMapping("/animals/new")
class NewAnimalController {
    private final AnimalKeeping keeping;
    private final Targets targets;
    private final Clock clock;

    NewAnimalController(AnimalKeeping keeping, Targets targets, Clock clock) {
        this.keeping = keeping;
        this.targets = targets;
        this.clock = clock;
    }

    @ModelAttribute("species")
    List<SpeciesFacts> species(@AuthenticationPrincipal SignedIn me) {
        return byName(targets, me.siteId());
    }

    static List<SpeciesFacts> byName(Targets targets, long siteId) {
        return targets.speciesById(siteId).values().stream()
                .sorted(Comparator.comparing(SpeciesFacts::scientificName))
                .toList();
    }

    @GetMapping
    String fresh(Model model) {
        model.addAttribute("form", AnimalForm.empty());
        return "animal/new";
    }

    @PostMapping
    String add(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") AnimalForm form,
            BindingResult errors) {
        Optional<Instant> since = check(me, form, errors);
        if (errors.hasErrors()) {
            return "animal/new";
        }
        try {
            return "redirect:/animals/" + store(me, form, since);
        } catch (TakenException taken) {
            errors.rejectValue("accessionNumber", "animal.accession.taken");
            return "animal/new";
        }
    }

    /** Since when a new group is counted. */
    private Optional<Instant> check(SignedIn me, AnimalForm form, BindingResult errors) {
        if (errors.getTarget() == null) {
            return Optional.empty();
        }
        form.check(errors, LocalDate.now(clock.withZone(me.zone())));
        if (!form.isGroup()) {
            return Optional.empty();
        }
        if (form.count() == null && !errors.hasFieldErrors("count")) {
            errors.rejectValue("count", "animal.count.wrong");
        }
        return When.until(clock.instant(), me.zone()).read("since", form.since(), form.sinceWhich(), errors);
    }

    private long store(SignedIn me, AnimalForm form, Optional<Instant> since) {
        long id = since.map(at -> keeping.addGroup(
                        me.siteId(),
                        form.state(),
                        Given.of(form.count()),
                        new Happened(at, "", UUID.randomUUID(), me.personId())))
                .orElseGet(() -> keeping.add(me.siteId(), form.state(), me.personId()));
        form.length().ifPresent(length -> keeping.addLength(me.siteId(), id, length, me.personId()));
        return id;
    }
}
