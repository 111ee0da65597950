package dapple.practice;

import dapple.meter.MeterDetails;
import dapple.meter.MeterRegister;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.NotFoundException;
import jakarta.validation.Valid;
import java.time.Instant;
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

/** The two checks that keepers make themselves: the covered sensor, and one lamp kept for this. */
@Controller
@Allowed(Action.LOG_READINGS)
@RequestMapping("/meters/{meterId}")
class MeterCheckController {
    private final MeterRegister meters;
    private final PracticeRecord record;
    private final PracticeLogging logging;
    private final Present present;

    MeterCheckController(MeterRegister meters, PracticeRecord record, PracticeLogging logging, Present present) {
        this.meters = meters;
        this.record = record;
        this.logging = logging;
        this.present = present;
    }

    @ModelAttribute("meter")
    MeterDetails meter(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        return meters.get(me.siteId(), meterId);
    }

    @GetMapping("/dark-zero")
    String cover(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "meter", binding = false) MeterDetails meter,
            Model model) {
        model.addAttribute("form", CheckForm.empty(present.minute(me)));
        return darkZero(meter, model);
    }

    @PostMapping("/dark-zero")
    String covered(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "meter", binding = false) MeterDetails meter,
            @Valid @ModelAttribute("form") CheckForm form,
            BindingResult errors,
            Model model) {
        Optional<Shown> shown = shown(me, form, errors);
        if (shown.isEmpty()) {
            return darkZero(meter, model);
        }
        logging.checkDarkZero(entered(me, meter, form), shown.get());
        return back(meter);
    }

    @GetMapping("/lamp-check")
    String light(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "meter", binding = false) MeterDetails meter,
            Model model) {
        model.addAttribute("form", CheckForm.empty(present.minute(me)));
        return lampCheck(me, meter, model);
    }

    @PostMapping("/lamp-check")
    String lit(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "meter", binding = false) MeterDetails meter,
            @Valid @ModelAttribute("form") CheckForm form,
            BindingResult errors,
            Model model) {
        Optional<Shown> shown = shown(me, form, errors);
        if (shown.isEmpty()) {
            return lampCheck(me, meter, model);
        }
        logging.checkByLamp(entered(me, meter, form), shown.get());
        return back(meter);
    }

    private Optional<Shown> shown(SignedIn me, CheckForm form, BindingResult errors) {
        Optional<Instant> at = present.when(me).read("at", form.at(), form.atWhich(), errors);
        return errors.hasErrors()
                ? Optional.empty()
                : at.map(then ->
                        new Shown(Given.number(form.amount()), then, form.note().strip()));
    }

    private Entered entered(SignedIn me, MeterDetails meter, CheckForm form) {
        return present.entered(me, meter.facts().id(), Given.of(form.key()));
    }

    private static String darkZero(MeterDetails meter, Model model) {
        if (meter.facts().quantity().isTemperature()) {
            throw new NotFoundException();
        }
        model.addAttribute(
                "within",
                Tolerance.ofDarkZero(meter.facts().quantity(), meter.state().resolution())
                        .highest());
        return "practice/dark-zero";
    }

    /** The first value is not told: nobody shall read what is wished. */
    private String lampCheck(SignedIn me, MeterDetails meter, Model model) {
        model.addAttribute("lamp", record.lamp(me.siteId(), meter.facts().id()).orElseThrow(NotFoundException::new));
        return "practice/lamp-check";
    }

    private static String back(MeterDetails meter) {
        return "redirect:/meters/" + meter.facts().id() + "/practice";
    }
}
