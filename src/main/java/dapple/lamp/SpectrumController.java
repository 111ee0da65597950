package dapple.lamp;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Optional;
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
import org.springframework.web.multipart.MultipartFile;

/** The spectrum of a lamp model: a file, or text. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamp-models/{modelId}/spectrum")
class SpectrumController {
    private final SpectrumFiling filing;

    SpectrumController(SpectrumFiling filing) {
        this.filing = filing;
    }

    @ModelAttribute("dossier")
    Dossier dossier(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId) {
        return filing.dossier(me.siteId(), modelId);
    }

    @GetMapping
    String page(@ModelAttribute("dossier") Dossier dossier, Model model) {
        model.addAttribute("form", SpectrumForm.empty(dossier.version()));
        return "lamp/spectrum";
    }

    /** What stood in a file comes back as text, so that the line at fault can be put right. */
    @PostMapping
    String file(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @Valid @ModelAttribute("form") SpectrumForm form,
            BindingResult errors,
            @RequestParam Optional<MultipartFile> file,
            Model model,
            HttpServletResponse response) {
        String content = Uploaded.or(file, form.text());
        if (SpectrumRules.check(content, errors) instanceof SpectrumText.Outcome.Read read && !errors.hasErrors()) {
            NewSpectrum added = new NewSpectrum(form.source().strip(), content, read.spectrum(), me.personId());
            try {
                filing.fileSpectrum(me.siteId(), modelId, form.versionSeen(), added);
                return "redirect:/lamp-models/" + modelId;
            } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
                Dossier now = filing.dossier(me.siteId(), modelId);
                model.addAttribute("theirs", now);
                model.addAttribute("form", form.onVersion(now.version()));
                response.setStatus(HttpServletResponse.SC_CONFLICT);
            }
        }
        model.addAttribute("content", content.length() > FiledSpectrum.MOST_CHARACTERS ? "" : content);
        return "lamp/spectrum";
    }

    @PostMapping("/removal")
    String remove(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @RequestParam(defaultValue = "-1") long version) {
        filing.removeSpectrum(me.siteId(), modelId, version);
        return "redirect:/lamp-models/" + modelId;
    }
}
