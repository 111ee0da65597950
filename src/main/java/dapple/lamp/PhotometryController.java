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

/** The beam of a lamp model by a photometric file. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamp-models/{modelId}/photometry")
class PhotometryController {
    private final PhotometryFiling filing;
    private final SpectrumFiling dossiers;

    PhotometryController(PhotometryFiling filing, SpectrumFiling dossiers) {
        this.filing = filing;
        this.dossiers = dossiers;
    }

    @ModelAttribute("dossier")
    Dossier dossier(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId) {
        return dossiers.dossier(me.siteId(), modelId);
    }

    @ModelAttribute("filed")
    boolean isFiled(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId) {
        return filing.filed(me.siteId(), modelId).isPresent();
    }

    @GetMapping
    String page(@ModelAttribute("dossier") Dossier dossier, Model model) {
        model.addAttribute("form", SpectrumForm.empty(dossier.version()));
        return "lamp/photometry";
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
        Optional<LampShape.Measured> shape = PhotometryRules.check(content, errors);
        model.addAttribute("content", content.length() > FiledPhotometry.MOST_CHARACTERS ? "" : content);
        if (errors.hasErrors() || shape.isEmpty()) {
            return "lamp/photometry";
        }
        try {
            NewPhotometry added = new NewPhotometry(form.source().strip(), content, shape.get(), me.personId());
            filing.file(me.siteId(), modelId, form.versionSeen(), added);
            return "redirect:/lamp-models/" + modelId;
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            Dossier now = dossiers.dossier(me.siteId(), modelId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "lamp/photometry";
    }

    @PostMapping("/removal")
    String remove(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @RequestParam(defaultValue = "-1") long version) {
        filing.remove(me.siteId(), modelId, version);
        return "redirect:/lamp-models/" + modelId;
    }
}
