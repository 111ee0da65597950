package dapple.practice;

import dapple.meter.MeterDetails;
import dapple.meter.MeterRegister;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.When;
import jakarta.validation.Valid;
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

/** What is done with one meter and what happens to it: a page to see it all, a short form to say what happened. */
@Controller
@RequestMapping("/meters/{meterId}")
class PracticeController {
    private final MeterRegister meters;
    private final MeterStandings standings;
    private final PracticeRecord record;
    private final PracticeLogging logging;
    private final People people;
    private final Present present;

    PracticeController(
            MeterRegister meters,
            MeterStandings standings,
            PracticeRecord record,
            PracticeLogging logging,
            People people,
            Present present) {
        this.meters = meters;
        this.standings = standings;
        this.record = record;
        this.logging = logging;
        this.people = people;
        this.present = present;
    }

    @ModelAttribute("meter")
    MeterDetails meter(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        return meters.get(me.siteId(), meterId);
    }

    @ModelAttribute("kinds")
    MeterEventKind[] kinds() {
        return MeterEventKind.values();
    }

    @GetMapping("/practice")
    @Allowed(Action.SEE_STOCK)
    String page(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "meter", binding = false) MeterDetails meter,
            Model model) {
        long meterId = meter.facts().id();
        MeterStanding standing = standings.at(me.siteId(), me.zone());
        Optional<ReferenceLampFacts> lamp = record.lamp(me.siteId(), meterId);
        List<MeterCheckFacts> checks = record.checks(me.siteId(), meterId);
        model.addAttribute("notices", standing.notices(meter.facts()));
        model.addAttribute("doubt", standing.doubts().open(meterId));
        model.addAttribute("lamp", lamp);
        model.addAttribute("lampDue", standing.lampDue(meterId));
        model.addAttribute("checks", checks);
        model.addAttribute("chart", lamp.flatMap(by -> LampChart.of(by, checks, me.zone())));
        model.addAttribute("events", record.events(me.siteId(), meterId));
        model.addAttribute("names", people.names(me.siteId()));
        return "practice/practice";
    }

    @GetMapping("/events/new")
    @Allowed(Action.LOG_READINGS)
    String fresh(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("form", EventForm.empty(present.minute(me)));
        return "practice/event";
    }

    @PostMapping("/events/new")
    @Allowed(Action.LOG_READINGS)
    String happened(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long meterId,
            @Valid @ModelAttribute("form") EventForm form,
            BindingResult errors) {
        When when = present.when(me);
        Optional<Instant> at = when.read("at", form.at(), form.atWhich(), errors);
        if (errors.hasErrors() || at.isEmpty()) {
            return "practice/event";
        }
        Entered entered = present.entered(me, meterId, Given.of(form.key()));
        logging.happened(entered, Given.of(form.kind()), at.get(), form.note().strip());
        return "redirect:/meters/" + meterId + "/practice";
    }
}
