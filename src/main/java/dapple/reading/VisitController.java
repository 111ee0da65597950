package dapple.reading;

import dapple.enclosure.Facing;
import dapple.light.metrology.RepeatsTaken;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.practice.MeterStanding;
import dapple.practice.MeterStandings;
import dapple.site.Given;
import jakarta.servlet.http.HttpSession;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
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

/** One visit at one enclosure, on a phone: one number a screen, point by point in walking order. */
@Controller
@Allowed(Action.LOG_READINGS)
@RequestMapping("/enclosures/{enclosureId}")
class VisitController {
    private final VisitWalk walks;
    private final ReadingLogging logging;
    private final Readings readings;
    private final Meters meters;
    private final MeterStandings standings;
    private final Repeating repeating;
    private final Clock clock;

    VisitController(
            VisitWalk walks,
            ReadingLogging logging,
            Readings readings,
            Meters meters,
            MeterStandings standings,
            Repeating repeating,
            Clock clock) {
        this.walks = walks;
        this.logging = logging;
        this.readings = readings;
        this.meters = meters;
        this.standings = standings;
        this.repeating = repeating;
        this.clock = clock;
    }

    /** A fresh visit begins at its first point; nothing is stored before the first entry. */
    @GetMapping("/visit")
    String begin(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam(required = false) @Nullable Long plan,
            @RequestParam(required = false) @Nullable LocalDate due,
            HttpSession session) {
        UUID visitKey = UUID.randomUUID();
        BegunFrom.of(plan, due).ifPresent(walk -> walk.keep(session, visitKey));
        return "redirect:" + walks.at(me.siteId(), enclosureId, visitKey).onward();
    }

    @GetMapping("/visits/{visitKey}/points/{pointId}")
    String ask(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @PathVariable long pointId,
            @RequestParam(required = false) @Nullable Quantity quantity,
            HttpSession session,
            Model model) {
        Walk walk = walks.at(me.siteId(), enclosureId, visitKey);
        Step step = walk.step(pointId, Optional.ofNullable(quantity));
        Long meter = (Long) session.getAttribute(chosenFor(step.quantity()));
        model.addAttribute("form", EntryForm.empty(step.quantity(), meter));
        return asking(me, walk, step, Optional.ofNullable(meter), List.of(), model);
    }

    @PostMapping("/visits/{visitKey}/points/{pointId}")
    String log(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @PathVariable long pointId,
            @Valid @ModelAttribute("form") EntryForm form,
            BindingResult errors,
            @RequestParam(name = "repeat", defaultValue = "") List<String> carried,
            HttpSession session,
            Model model) {
        form.check(errors);
        checkMeter(me, form, errors);
        VisitPlace place = new VisitPlace(visitKey, enclosureId, pointId);
        TypedBefore before = TypedBefore.of(carried, form.asked());
        if (errors.hasErrors()) {
            return again(me, place, form, before.texts(), model);
        }
        session.setAttribute(chosenFor(form.asked()), form.meterId());
        if (!repeating.asksAt(me, pointId, form.asked())) {
            return logged(me, form.entry(place, clock.instant()));
        }
        RepeatsTaken taken = before.and(Given.of(form.amount()));
        Repeating.Progress progress = repeating.progress(me, pointId, Given.of(form.meterId()), taken);
        if (progress.next() != RepeatsTaken.Next.ENOUGH) {
            model.addAttribute("form", form.forAnother());
            return again(me, place, form, before.textsWith(Given.of(form.amount())), model);
        }
        return logged(me, form.entry(place, clock.instant()).repeated(taken, progress.amount()));
    }

    private String logged(SignedIn me, Entry entry) {
        return "redirect:/readings/" + logging.log(Visitor.of(me), entry);
    }

    private String again(SignedIn me, VisitPlace place, EntryForm form, List<String> typed, Model model) {
        Walk walk = walks.at(me.siteId(), place.enclosureId(), place.visitKey());
        Step step = walk.step(place.pointId(), Optional.ofNullable(form.quantity()));
        model.addAttribute("heldBefore", form.held());
        return asking(me, walk, step, Optional.ofNullable(form.meterId()), typed, model);
    }

    /** A meter shows one quantity: no number of another is written down for it. */
    private void checkMeter(SignedIn me, EntryForm form, BindingResult errors) {
        if (form.meterId() == null) {
            return;
        }
        MeterFacts meter = meters.get(me.siteId(), form.meterId());
        if (meter.quantity() != form.asked()) {
            errors.rejectValue("meterId", "visit.meter.wrong");
        } else if (!errors.hasErrors() && !form.isSure() && !meter.canShow(Given.number(form.amount()))) {
            errors.rejectValue("sure", "visit.out-of-range");
        }
    }

    @PostMapping("/visits/{visitKey}/points/{pointId}/unread")
    String note(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @PathVariable long pointId,
            @RequestParam UUID key,
            @RequestParam Outcome outcome,
            @RequestParam(required = false) @Nullable Quantity quantity) {
        VisitPlace place = new VisitPlace(visitKey, enclosureId, pointId);
        logging.note(Visitor.of(me), new Unread(key, place, outcome, Optional.ofNullable(quantity), clock.instant()));
        return "redirect:" + walks.at(me.siteId(), enclosureId, visitKey).onward();
    }

    private String asking(SignedIn me, Walk walk, Step step, Optional<Long> wanted, List<String> typed, Model model) {
        List<MeterFacts> fitting = walk.metersFor(step.quantity());
        model.addAttribute("walk", walk);
        model.addAttribute("step", step);
        model.addAttribute("point", step.point());
        model.addAttribute("lastRead", readings.lastBefore(step.point().id(), step.quantity(), clock.instant()));
        model.addAttribute("meters", fitting);
        model.addAttribute("repeats", new RepeatsShown(repeating.asksAt(me, step.point(), step.quantity()), typed));
        model.addAttribute("outcomes", outcomes(step));
        model.addAttribute("otherwise", otherwise(step));
        model.addAttribute("unreadKey", UUID.randomUUID());
        MeterStanding standing = standings.at(me.siteId(), me.zone());
        model.addAttribute("standing", standing);
        model.addAttribute("chosenMeter", chosen(wanted, fitting, standing));
        return "reading/ask";
    }

    private static List<Outcome> outcomes(Step step) {
        return Arrays.stream(Outcome.values())
                .filter(outcome -> outcome != Outcome.SKIPPED || step.isSkippable())
                .toList();
    }

    /** How else the sensor might be held; of a temperature it does not matter. */
    private static List<Facing> otherwise(Step step) {
        return Arrays.stream(Facing.values())
                .filter(facing -> facing != step.point().facing())
                .filter(facing -> !step.quantity().isTemperature())
                .toList();
    }

    private static String chosenFor(Quantity quantity) {
        return "meter." + quantity.name();
    }

    /** The meter of the last entry of this quantity, or the first that fits and is at hand. */
    private static @Nullable MeterFacts chosen(
            Optional<Long> wanted, List<MeterFacts> fitting, MeterStanding standing) {
        return fitting.stream()
                .filter(meter -> wanted.filter(id -> meter.id() == id).isPresent())
                .findFirst()
                .or(() -> fitting.stream()
                        .filter(meter -> !standing.isAway(meter))
                        .findFirst())
                .orElseGet(() -> fitting.isEmpty() ? null : fitting.get(0));
    }
}
