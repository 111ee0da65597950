package dapple.round;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Plans a round and changes it. */
@Controller
@Allowed(Action.ARRANGE_ROUNDS)
@RequestMapping("/rounds")
class RoundFormController {
    private static final String FRESH = "round/new";
    private static final String EDIT = "round/edit";
    private static final String DOORS = "doors";

    private final RoundArranging arranging;
    private final Enclosures enclosures;
    private final People people;
    private final Clock clock;

    RoundFormController(RoundArranging arranging, Enclosures enclosures, People people, Clock clock) {
        this.arranging = arranging;
        this.enclosures = enclosures;
        this.people = people;
        this.clock = clock;
    }

    @ModelAttribute("recipients")
    Recipients recipients(@AuthenticationPrincipal SignedIn me) {
        return Recipients.of(people.at(me.siteId()), today(me));
    }

    @ModelAttribute("week")
    DayOfWeek[] week() {
        return DayOfWeek.values();
    }

    @GetMapping("/new")
    String fresh(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("form", RoundForm.empty(today(me)));
        model.addAttribute(DOORS, Doors.stored(all(me), List.of()));
        return FRESH;
    }

    @PostMapping("/new")
    String add(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "recipients", binding = false) Recipients recipients,
            @Valid @ModelAttribute("form") RoundForm form,
            BindingResult errors,
            @RequestParam MultiValueMap<String, String> typed,
            Model model) {
        Doors doors = Doors.typed(all(me), typed);
        if (isWrong(form, recipients, doors, errors, model)) {
            return FRESH;
        }
        try {
            return "redirect:/rounds/" + arranging.add(me.siteId(), form.details(recipients, doors.inOrder()));
        } catch (TakenException taken) {
            errors.rejectValue("title", "round.name.taken");
            return FRESH;
        }
    }

    @GetMapping("/{planId}/edit")
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long planId, Model model) {
        PlanFacts plan = arranging.get(me.siteId(), planId);
        model.addAttribute("plan", plan);
        model.addAttribute("form", RoundForm.of(plan));
        model.addAttribute(DOORS, Doors.stored(all(me), arranging.enclosureIds(me.siteId(), planId)));
        return EDIT;
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping("/{planId}/edit")
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long planId,
            @ModelAttribute(name = "recipients", binding = false) Recipients recipients,
            @Valid @ModelAttribute("form") RoundForm form,
            BindingResult errors,
            @RequestParam MultiValueMap<String, String> typed,
            Model model,
            HttpServletResponse response) {
        model.addAttribute("plan", arranging.get(me.siteId(), planId));
        Doors doors = Doors.typed(all(me), typed);
        if (isWrong(form, recipients, doors, errors, model)) {
            return EDIT;
        }
        try {
            arranging.change(me.siteId(), planId, form.versionSeen(), form.details(recipients, doors.inOrder()));
            return "redirect:/rounds/" + planId;
        } catch (TakenException taken) {
            errors.rejectValue("title", "round.name.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            PlanFacts now = arranging.get(me.siteId(), planId);
            model.addAttribute("theirs", now);
            model.addAttribute("theirDoors", codes(me, planId));
            model.addAttribute("names", people.names(me.siteId()));
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return EDIT;
    }

    /** Shows again what was typed, and says what is wrong with it. */
    private static boolean isWrong(
            RoundForm form, Recipients recipients, Doors doors, BindingResult errors, Model model) {
        model.addAttribute(DOORS, doors);
        if (errors.getTarget() != null) {
            form.check(recipients, errors);
        }
        if (doors.isNoneWalked()) {
            errors.reject("round.doors.none");
        } else if (doors.wrong() > 0) {
            errors.reject("round.place.wrong");
        }
        return errors.hasErrors();
    }

    private List<EnclosureFacts> all(SignedIn me) {
        return enclosures.all(me.siteId());
    }

    /** The codes of the doors as they are stored by now, in walking order. */
    private List<String> codes(SignedIn me, long planId) {
        return arranging.enclosureIds(me.siteId(), planId).stream()
                .map(id -> enclosures.get(me.siteId(), id).code())
                .toList();
    }

    private LocalDate today(SignedIn me) {
        return LocalDate.ofInstant(clock.instant(), me.zone());
    }
}
