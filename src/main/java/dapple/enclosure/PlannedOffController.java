package dapple.enclosure;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
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

/** When the lamps of an enclosure are off on purpose: the list, a new time, the early end of one. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}/off")
class PlannedOffController {
    private final Enclosures enclosures;
    private final PlanningOff planning;
    private final Clock clock;

    PlannedOffController(Enclosures enclosures, PlanningOff planning, Clock clock) {
        this.enclosures = enclosures;
        this.planning = planning;
        this.clock = clock;
    }

    @ModelAttribute("enclosure")
    EnclosureFacts enclosure(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return enclosures.get(me.siteId(), enclosureId);
    }

    @ModelAttribute("times")
    List<PlannedOffRow> times(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return planning.of(me.siteId(), enclosureId);
    }

    @GetMapping
    String page(Model model) {
        model.addAttribute("form", PlannedOffForm.empty());
        return "enclosure/off";
    }

    @PostMapping
    String plan(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @Valid @ModelAttribute("form") PlannedOffForm form,
            BindingResult errors) {
        Optional<PlannedOffTime> time = form.time(enclosureId, me.zone(), errors);
        if (time.isEmpty()) {
            return "enclosure/off";
        }
        try {
            planning.plan(me.siteId(), time.get(), me.personId());
            return back(enclosureId);
        } catch (TakenException overlaps) {
            errors.rejectValue("fromTime", "off.overlaps");
            return "enclosure/off";
        }
    }

    @PostMapping("/{offId}/end")
    String end(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long offId,
            @Valid @ModelAttribute("ending") EndOffForm form,
            BindingResult errors,
            Model model) {
        Optional<Instant> at = form.end(clock.instant(), me.zone(), errors);
        if (at.isEmpty()) {
            model.addAttribute("endingId", offId);
            return page(model);
        }
        planning.end(me.siteId(), enclosureId, offId, at.get());
        return back(enclosureId);
    }

    private static String back(long enclosureId) {
        return "redirect:/enclosures/" + enclosureId + "/off";
    }
}
