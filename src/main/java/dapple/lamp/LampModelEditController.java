package dapple.lamp;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** What is said of a lamp model, to be changed. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamp-models/{modelId}/edit")
class LampModelEditController {
    private final LampModelArranging models;
    private final SpectrumFiling filing;
    private final LampSuggestions suggestions;

    LampModelEditController(LampModelArranging models, SpectrumFiling filing, LampSuggestions suggestions) {
        this.models = models;
        this.filing = filing;
        this.suggestions = suggestions;
    }

    @ModelAttribute("dossier")
    Dossier dossier(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId) {
        return filing.dossier(me.siteId(), modelId);
    }

    @ModelAttribute("classes")
    LampClass[] classes() {
        return LampClass.values();
    }

    @ModelAttribute("shapes")
    List<ShapeKind> shapes(@ModelAttribute(name = "dossier", binding = false) Dossier dossier) {
        return ShapeKind.choosable(dossier.state().shape());
    }

    @GetMapping
    String page(@ModelAttribute("dossier") Dossier dossier, Model model) {
        model.addAttribute("form", ModelForm.of(dossier));
        model.addAttribute("suggestions", suggestions.of(dossier.state().lampClass()));
        return "lamp/model-edit";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @ModelAttribute(name = "dossier", binding = false) Dossier dossier,
            @Valid @ModelAttribute("form") ModelForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        ShapeRules.check(errors, dossier.state().shape());
        model.addAttribute("suggestions", suggestions.shownBeside(errors));
        if (errors.hasErrors()) {
            return "lamp/model-edit";
        }
        try {
            models.change(
                    me.siteId(),
                    modelId,
                    form.versionSeen(),
                    form.change(dossier.state().shape()));
            return "redirect:/lamp-models/" + modelId;
        } catch (TakenException taken) {
            errors.rejectValue("name", "lamp-model.name.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            Dossier now = filing.dossier(me.siteId(), modelId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "lamp/model-edit";
    }
}
