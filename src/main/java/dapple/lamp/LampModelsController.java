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

/** The lamp models of a site; one is entered here, its class first. */
@Controller
@RequestMapping("/lamp-models")
class LampModelsController {
    private final Lamps lamps;
    private final LampModelArranging models;
    private final LampSuggestions suggestions;

    LampModelsController(Lamps lamps, LampModelArranging models, LampSuggestions suggestions) {
        this.lamps = lamps;
        this.models = models;
        this.suggestions = suggestions;
    }

    @ModelAttribute("classes")
    LampClass[] classes() {
        return LampClass.values();
    }

    @ModelAttribute("shapes")
    List<ShapeKind> shapes() {
        return ShapeKind.choosable(Optional.empty());
    }

    @GetMapping
    @Allowed(Action.SEE_STOCK)
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("rows", lamps.models(me.siteId()));
        return "lamp/models";
    }

    @GetMapping("/new")
    @Allowed(Action.KEEP_LAMPS)
    String fresh(@RequestParam Optional<LampClass> lampClass, Model model) {
        if (lampClass.isEmpty()) {
            return "lamp/model-class";
        }
        model.addAttribute("form", ModelForm.empty(lampClass.get()));
        model.addAttribute("suggestions", suggestions.of(lampClass.get()));
        return "lamp/model-new";
    }

    @PostMapping("/new")
    @Allowed(Action.KEEP_LAMPS)
    String add(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") ModelForm form,
            BindingResult errors,
            Model model) {
        ShapeRules.check(errors, Optional.empty());
        if (!errors.hasErrors()) {
            try {
                return "redirect:/lamp-models/" + models.add(me.siteId(), form.change(Optional.empty()));
            } catch (TakenException taken) {
                errors.rejectValue("name", "lamp-model.name.taken");
            }
        }
        model.addAttribute("suggestions", suggestions.shownBeside(errors));
        return "lamp/model-new";
    }
}
