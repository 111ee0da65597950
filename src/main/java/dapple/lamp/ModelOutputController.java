package dapple.lamp;

import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import dapple.site.SourceMark;
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
import org.springframework.web.bind.annotation.RequestParam;

/** What a lamp model gives of one quantity. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamp-models/{modelId}/outputs/{quantity}")
class ModelOutputController {
    private final LampModelArranging models;
    private final SpectrumFiling filing;
    private final LampSuggestions suggestions;

    ModelOutputController(LampModelArranging models, SpectrumFiling filing, LampSuggestions suggestions) {
        this.models = models;
        this.filing = filing;
        this.suggestions = suggestions;
    }

    @ModelAttribute("dossier")
    Dossier dossier(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId, Model model) {
        Dossier dossier = filing.dossier(me.siteId(), modelId);
        model.addAttribute("suggestions", suggestions.of(dossier.state().lampClass()));
        return dossier;
    }

    /** Lamps give light alone. */
    @ModelAttribute
    void check(@PathVariable Quantity quantity) {
        if (!LampOutput.QUANTITIES.contains(quantity)) {
            throw new NotFoundException();
        }
    }

    @ModelAttribute("chosenMarks")
    List<SourceMark> chosenMarks() {
        return ModelOutputForm.MARKS;
    }

    @GetMapping
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @PathVariable Quantity quantity,
            Model model) {
        StatedOutput stated = models.output(me.siteId(), modelId, quantity);
        model.addAttribute("stated", stated);
        model.addAttribute("form", ModelOutputForm.of(stated));
        return "lamp/model-output";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String state(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @PathVariable Quantity quantity,
            @Valid @ModelAttribute("form") ModelOutputForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        model.addAttribute("stated", models.output(me.siteId(), modelId, quantity));
        if (errors.hasErrors()) {
            return "lamp/model-output";
        }
        if (form.mark() == SourceMark.COMPUTED) {
            errors.rejectValue("mark", "lamp-model.output.mark.computed");
            return "lamp/model-output";
        }
        try {
            models.stateOutput(me.siteId(), modelId, form.versionSeen(), form.output(quantity));
            return "redirect:/lamp-models/" + modelId;
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            StatedOutput now = models.output(me.siteId(), modelId, quantity);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "lamp/model-output";
    }

    @PostMapping("/removal")
    String remove(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @PathVariable Quantity quantity,
            @RequestParam(defaultValue = "0") long version) {
        models.removeOutput(me.siteId(), modelId, version, quantity);
        return "redirect:/lamp-models/" + modelId;
    }
}
