package dapple.meter;

import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Meters are entered here. */
@Controller
@RequestMapping("/meters")
class MetersController {
    private final MeterRegister meters;

    MetersController(MeterRegister meters) {
        this.meters = meters;
    }

    @ModelAttribute("quantities")
    Quantity[] quantities() {
        return Quantity.values();
    }

    @GetMapping("/new")
    @Allowed(Action.KEEP_METERS)
    String fresh(Model model) {
        model.addAttribute("form", MeterForm.empty());
        return "meter/new";
    }

    @PostMapping("/new")
    @Allowed(Action.KEEP_METERS)
    String add(
            @AuthenticationPrincipal SignedIn me, @Valid @ModelAttribute("form") MeterForm form, BindingResult errors) {
        if (!errors.hasErrors()) {
            form.check(errors);
        }
        if (errors.hasErrors()) {
            return "meter/new";
        }
        try {
            return "redirect:/meters/" + meters.add(me.siteId(), Given.of(form.quantity()), form.change());
        } catch (TakenException taken) {
            errors.rejectValue("code", "meter.code.taken");
            return "meter/new";
        }
    }
}
