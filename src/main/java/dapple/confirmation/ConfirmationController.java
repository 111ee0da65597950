package dapple.confirmation;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.target.EarlierReadings;
import dapple.target.ZoneLimits;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The species without a target, ticked many at once and confirmed by name and reason. */
@Controller
@Allowed(Action.SET_TARGETS)
@RequestMapping("/targets/confirmation")
class ConfirmationController {
    private static final String PAGE = "confirmation/confirmation";

    private final Confirming confirming;
    private final EarlierReadings earlier;
    private final ZoneLimits zoneLimits;

    ConfirmationController(Confirming confirming, EarlierReadings earlier, ZoneLimits zoneLimits) {
        this.confirming = confirming;
        this.earlier = earlier;
        this.zoneLimits = zoneLimits;
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("form", ConfirmationForm.empty(earlier.existAt(me.siteId())));
        return show(me, model);
    }

    /** If one of the ticked has got a target meanwhile nothing is stored, and the page says which. */
    @PostMapping
    String confirm(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") ConfirmationForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (!errors.hasErrors() && !form.isReadable()) {
            errors.rejectValue("species", "confirmation.zone.missing");
        }
        if (errors.hasErrors()) {
            return show(me, model);
        }
        try {
            confirming.confirm(
                    me.siteId(),
                    new Confirmation(
                            form.confirmed(), me.personId(), form.reason().strip(), form.isForEarlierReadings()));
            return "redirect:/targets";
        } catch (ConfirmedMeanwhileException meanwhile) {
            model.addAttribute("meanwhile", meanwhile.species());
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return show(me, model);
        }
    }

    private String show(SignedIn me, Model model) {
        model.addAttribute("candidates", confirming.candidates(me.siteId()));
        model.addAttribute("zoneLimits", zoneLimits);
        model.addAttribute("behind", confirming.behindEvidence(me.siteId()));
        return PAGE;
    }
}
