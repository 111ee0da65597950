package dapple.reading;

import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.practice.MeterDoubts;
import dapple.site.Given;
import dapple.target.Targets;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** What a reading was judged to be, shown to who took it; its correction and its withdrawal. */
@Controller
@Allowed(Action.LOG_READINGS)
@RequestMapping("/readings/{readingId}")
class ReadingController {
    private final Readings readings;
    private final VisitWalk walks;
    private final ReadingLogging logging;
    private final ReadingWithdrawing withdrawing;
    private final Targets targets;
    private final People people;
    private final BurningLamps lamps;
    private final MeterDoubts doubts;

    ReadingController(
            Readings readings,
            VisitWalk walks,
            ReadingLogging logging,
            ReadingWithdrawing withdrawing,
            Targets targets,
            People people,
            BurningLamps lamps,
            MeterDoubts doubts) {
        this.readings = readings;
        this.walks = walks;
        this.logging = logging;
        this.withdrawing = withdrawing;
        this.targets = targets;
        this.people = people;
        this.lamps = lamps;
        this.doubts = doubts;
    }

    @GetMapping
    String reply(@AuthenticationPrincipal SignedIn me, @PathVariable long readingId, Model model) {
        JudgedReading reading = show(me, readingId, model);
        model.addAttribute(
                "cold",
                lamps.around(me, reading.enclosureId(), List.of(reading.takenAt()))
                        .coldAt(reading.takenAt(), reading.quantity()));
        return "reading/reply";
    }

    @GetMapping("/correction")
    String correcting(@AuthenticationPrincipal SignedIn me, @PathVariable long readingId, Model model) {
        show(me, readingId, model);
        model.addAttribute("form", CorrectionForm.empty());
        return "reading/correction";
    }

    @PostMapping("/correction")
    String correct(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long readingId,
            @Valid @ModelAttribute("form") CorrectionForm form,
            BindingResult errors,
            Model model) {
        Quantity quantity = readings.recorded(me.siteId(), readingId).quantity();
        TypedAmount.check(form.amount(), quantity, errors);
        if (errors.hasErrors()) {
            show(me, readingId, model);
            return "reading/correction";
        }
        Correction correction = new Correction(
                Given.of(form.key()), Given.number(form.amount()), form.reason().strip());
        return "redirect:/readings/" + logging.correct(Visitor.of(me), readingId, correction);
    }

    @GetMapping("/withdrawal")
    String withdrawing(@AuthenticationPrincipal SignedIn me, @PathVariable long readingId, Model model) {
        show(me, readingId, model);
        model.addAttribute("form", new WithdrawalForm(""));
        return "reading/withdrawal";
    }

    @PostMapping("/withdrawal")
    String withdraw(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long readingId,
            @Valid @ModelAttribute("form") WithdrawalForm form,
            BindingResult errors,
            Model model) {
        if (errors.hasErrors()) {
            show(me, readingId, model);
            return "reading/withdrawal";
        }
        withdrawing.withdraw(Visitor.of(me), readingId, form.reason().strip());
        return "redirect:/readings/" + readingId;
    }

    private JudgedReading show(SignedIn me, long readingId, Model model) {
        List<ReadingView> judged = readings.judged(me.siteId(), readingId);
        JudgedReading reading = judged.get(0).reading();
        RecordedReading recorded = readings.recorded(me.siteId(), readingId);
        model.addAttribute("views", judged);
        model.addAttribute("view", judged.get(0));
        model.addAttribute("recorded", recorded);
        model.addAttribute("doubt", doubts.at(me.siteId()).of(reading.meterId(), reading.takenAt()));
        model.addAttribute("mayChange", recorded.mayBeChangedBy(Visitor.of(me)));
        model.addAttribute("species", targets.speciesById(me.siteId()));
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute(
                "walk", walks.at(me.siteId(), reading.enclosureId(), readings.visitKey(me.siteId(), readingId)));
        return reading;
    }
}
