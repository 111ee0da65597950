package dapple.practice;

import dapple.meter.MeterDetails;
import dapple.meter.MeterRegister;
import dapple.meter.Withdrawal;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Clock;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Withdraws what was wrongly said to have happened to a meter. */
@Controller
@Allowed(Action.LOG_READINGS)
@RequestMapping("/meters/{meterId}/events/{eventId}/withdrawal")
class EventWithdrawalController {
    private static final String PAGE = "practice/withdrawal";

    private final MeterRegister meters;
    private final PracticeRecord record;
    private final PracticeLogging logging;
    private final Clock clock;

    EventWithdrawalController(MeterRegister meters, PracticeRecord record, PracticeLogging logging, Clock clock) {
        this.meters = meters;
        this.record = record;
        this.logging = logging;
        this.clock = clock;
    }

    @ModelAttribute("meter")
    MeterDetails meter(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        return meters.get(me.siteId(), meterId);
    }

    @ModelAttribute("event")
    MeterEventFacts event(
            @AuthenticationPrincipal SignedIn me, @PathVariable long meterId, @PathVariable long eventId) {
        return record.event(me.siteId(), meterId, eventId);
    }

    @GetMapping
    String why(Model model) {
        model.addAttribute("form", new EventWithdrawalForm(""));
        return PAGE;
    }

    /** Who comes second gets 409, and the page says who withdrew it and why. */
    @PostMapping
    String withdraw(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "event", binding = false) MeterEventFacts event,
            @Valid @ModelAttribute("form") EventWithdrawalForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (errors.hasErrors()) {
            return PAGE;
        }
        Withdrawal withdrawal =
                new Withdrawal(clock.instant(), me.personId(), form.reason().strip());
        try {
            logging.withdraw(me.siteId(), event, withdrawal);
            return "redirect:/meters/" + event.meterId() + "/practice";
        } catch (ConflictException already) {
            model.addAttribute("event", record.event(me.siteId(), event.meterId(), event.id()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return PAGE;
        }
    }
}
