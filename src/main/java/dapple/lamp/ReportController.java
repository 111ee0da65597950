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

/** A document about the spectrum of a lamp model. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamp-models/{modelId}/report")
class ReportController {
    private final SpectrumFiling filing;
    private final PastDay pastDay;

    ReportController(SpectrumFiling filing, PastDay pastDay) {
        this.filing = filing;
        this.pastDay = pastDay;
    }

    @ModelAttribute("dossier")
    Dossier dossier(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId) {
        return filing.dossier(me.siteId(), modelId);
    }

    @GetMapping
    String page(@ModelAttribute("dossier") Dossier dossier, Model model) {
        model.addAttribute("form", ReportForm.of(dossier));
        return "lamp/report";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String file(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @Valid @ModelAttribute("form") ReportForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        pastDay.check("day", Optional.ofNullable(form.day()), me, errors);
        if (errors.hasErrors()) {
            return "lamp/report";
        }
        try {
            filing.fileReport(me.siteId(), modelId, form.versionSeen(), form.report());
            return "redirect:/lamp-models/" + modelId;
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            Dossier now = filing.dossier(me.siteId(), modelId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "lamp/report";
    }

    @PostMapping("/removal")
    String remove(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @RequestParam(defaultValue = "-1") long version) {
        filing.removeReport(me.siteId(), modelId, version);
        return "redirect:/lamp-models/" + modelId;
    }
}
