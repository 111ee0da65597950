package dapple.meter;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Enters calibrations of a meter, and withdraws wrong ones. */
@Controller
@Allowed(Action.KEEP_METERS)
@RequestMapping("/meters/{meterId}/calibrations")
class CalibrationController {
    private final MeterRegister meters;
    private final Calibrations calibrations;
    private final Clock clock;

    CalibrationController(MeterRegister meters, Calibrations calibrations, Clock clock) {
        this.meters = meters;
        this.calibrations = calibrations;
        this.clock = clock;
    }

    @ModelAttribute("meter")
    MeterDetails meter(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        return meters.get(me.siteId(), meterId);
    }

    @GetMapping("/new")
    String fresh(Model model) {
        model.addAttribute("form", CalibrationForm.empty());
        return "meter/calibration-new";
    }

    @PostMapping("/new")
    String enter(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long meterId,
            @Valid @ModelAttribute("form") CalibrationForm form,
            BindingResult errors) {
        if (!errors.hasErrors()) {
            form.check(LocalDate.ofInstant(clock.instant(), me.zone()), errors);
        }
        if (errors.hasErrors()) {
            return "meter/calibration-new";
        }
        try {
            calibrations.enter(me.siteId(), meterId, form.calibration(me.zone()), me.personId());
            return back(meterId);
        } catch (TakenException taken) {
            errors.rejectValue("calibratedOn", "calibration.taken");
            return "meter/calibration-new";
        }
    }

    @GetMapping("/{calibrationId}/withdrawal")
    String why(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long meterId,
            @PathVariable long calibrationId,
            Model model) {
        model.addAttribute("calibration", calibrations.get(me.siteId(), meterId, calibrationId));
        model.addAttribute("form", new WithdrawalForm(""));
        return "meter/withdrawal";
    }

    @PostMapping("/{calibrationId}/withdrawal")
    String withdraw(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long meterId,
            @PathVariable long calibrationId,
            @Valid @ModelAttribute("form") WithdrawalForm form,
            BindingResult errors,
            Model model) {
        if (errors.hasErrors()) {
            model.addAttribute("calibration", calibrations.get(me.siteId(), meterId, calibrationId));
            return "meter/withdrawal";
        }
        Calibrations.Reason reason =
                new Calibrations.Reason(me.personId(), form.reason().strip());
        calibrations.withdraw(me.siteId(), meterId, calibrationId, reason);
        return back(meterId);
    }

    private static String back(long meterId) {
        return "redirect:/meters/" + meterId;
    }
}
