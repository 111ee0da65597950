package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.reading.VisitWalk.Walk;
import jakarta.servlet.http.HttpSession;
import jakarta.validation.Valid;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
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

/** One visit at one enclosure, on a phone: a point a screen, in walking order. */
@Controller
@Allowed(Action.LOG_READINGS)
@RequestMapping("/enclosures/{enclosureId}")
class VisitController {
    private static final String METER = "meterId";

    private final VisitWalk walks;
    private final ReadingLogging logging;
    private final Readings readings;
    private final Meters meters;
    private final Clock clock;

    VisitController(VisitWalk walks, ReadingLogging logging, Readings readings, Meters meters, Clock clock) {
        this.walks = walks;
        this.logging = logging;
        this.readings = readings;
        this.meters = meters;
        this.clock = clock;
    }

    /** A fresh visit begins at its first point; nothing is stored before the first entry. */
    @GetMapping("/visit")
    String begin(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return "redirect:"
                + walks.at(me.siteId(), enclosureId, UUID.randomUUID()).onward();
    }

    @GetMapping("/visits/{visitKey}")
    String summary(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            Model model) {
        model.addAttribute("walk", walks.at(me.siteId(), enclosureId, visitKey));
        model.addAttribute("latest", readings.latestIn(me.siteId(), enclosureId));
        return "reading/visit";
    }

    @GetMapping("/visits/{visitKey}/points/{pointId}")
    String ask(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @PathVariable long pointId,
            HttpSession session,
            Model model) {
        model.addAttribute("form", EntryForm.empty((Long) session.getAttribute(METER)));
        return asking(walks.at(me.siteId(), enclosureId, visitKey), me, pointId, model);
    }

    @PostMapping("/visits/{visitKey}/points/{pointId}")
    String log(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @PathVariable long pointId,
            @Valid @ModelAttribute("form") EntryForm form,
            BindingResult errors,
            HttpSession session,
            Model model) {
        if (errors.hasErrors()) {
            return asking(walks.at(me.siteId(), enclosureId, visitKey), me, pointId, model);
        }
        session.setAttribute(METER, form.meterId());
        Entry entry = new Entry(
                Objects.requireNonNull(form.key()),
                new VisitPlace(visitKey, enclosureId, pointId),
                Objects.requireNonNull(form.meterId()),
                Objects.requireNonNull(form.amount()).doubleValue(),
                clock.instant());
        return "redirect:/readings/" + logging.log(Visitor.of(me), entry);
    }

    @PostMapping("/visits/{visitKey}/points/{pointId}/unread")
    String note(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @PathVariable long pointId,
            @RequestParam UUID key,
            @RequestParam Outcome outcome) {
        logging.note(Visitor.of(me), new Unread(key, new VisitPlace(visitKey, enclosureId, pointId), outcome));
        return "redirect:" + walks.at(me.siteId(), enclosureId, visitKey).onward();
    }

    private String asking(Walk walk, SignedIn me, long pointId, Model model) {
        PointFacts point = walk.point(pointId);
        List<MeterFacts> inUse = meters.inUse(me.siteId());
        model.addAttribute("walk", walk);
        model.addAttribute("point", point);
        model.addAttribute("lastRead", readings.lastBefore(pointId, clock.instant()));
        model.addAttribute("meters", inUse);
        model.addAttribute("outcomes", Outcome.values());
        model.addAttribute("unreadKey", UUID.randomUUID());
        model.addAttribute("chosenMeter", chosen((EntryForm) model.getAttribute("form"), inUse));
        return "reading/ask";
    }

    /** The meter of the last entry, or the first of the site. */
    private static @Nullable MeterFacts chosen(@Nullable EntryForm form, List<MeterFacts> inUse) {
        Long wanted = form == null ? null : form.meterId();
        return inUse.stream()
                .filter(meter -> wanted != null && meter.id() == wanted)
                .findFirst()
                .orElseGet(() -> inUse.isEmpty() ? null : inUse.get(0));
    }
}
