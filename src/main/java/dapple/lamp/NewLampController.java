package dapple.lamp;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Enters a lamp. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamps/new")
class NewLampController {
    private final Lamps lamps;
    private final LampArranging arranging;
    private final PastDay pastDay;

    NewLampController(Lamps lamps, LampArranging arranging, PastDay pastDay) {
        this.lamps = lamps;
        this.arranging = arranging;
        this.pastDay = pastDay;
    }

    @GetMapping
    String fresh(@AuthenticationPrincipal SignedIn me, @RequestParam Optional<Long> modelId, Model model) {
        List<LampModelFacts> models = lamps.models(me.siteId());
        model.addAttribute("models", models);
        model.addAttribute("form", LampForm.empty(modelId));
        return "lamp/lamp-new";
    }

    @PostMapping
    String add(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") LampForm form,
            BindingResult errors,
            Model model) {
        pastDay.check("boughtOn", form.day(), me, errors);
        if (!errors.hasErrors()) {
            try {
                return "redirect:/lamps/" + arranging.add(me.siteId(), form.lamp());
            } catch (TakenException taken) {
                errors.rejectValue("tag", "lamp.tag.taken");
            }
        }
        model.addAttribute("models", lamps.models(me.siteId()));
        return "lamp/lamp-new";
    }
}
