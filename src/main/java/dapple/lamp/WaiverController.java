package dapple.lamp;

import dapple.lamp.SpectrumFiling.Signer;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
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

/** Somebody answers for using a lamp model whose spectrum is not known. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamp-models/{modelId}/waiver")
class WaiverController {
    private final SpectrumFiling filing;

    WaiverController(SpectrumFiling filing) {
        this.filing = filing;
    }

    @ModelAttribute("dossier")
    Dossier dossier(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId) {
        return filing.dossier(me.siteId(), modelId);
    }

    @GetMapping
    String page(@ModelAttribute("dossier") Dossier dossier, Model model) {
        model.addAttribute("form", new WaiverForm(dossier.version(), ""));
        return "lamp/waiver";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String file(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @Valid @ModelAttribute("form") WaiverForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (errors.hasErrors()) {
            return "lamp/waiver";
        }
        try {
            Signer signer = new Signer(me.personId(), me.fullName());
            filing.waive(me.siteId(), modelId, form.versionSeen(), form.reason().strip(), signer);
            return "redirect:/lamp-models/" + modelId;
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            Dossier now = filing.dossier(me.siteId(), modelId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "lamp/waiver";
    }

    @PostMapping("/removal")
    String remove(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @RequestParam(defaultValue = "-1") long version) {
        filing.takeBackWaiver(me.siteId(), modelId, version);
        return "redirect:/lamp-models/" + modelId;
    }
}
