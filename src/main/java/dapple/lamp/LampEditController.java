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

/** What is said of a lamp, to be changed. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamps/{lampId}/edit")
class LampEditController {
    private final Lamps lamps;
    private final LampArranging arranging;
    private final PastDay pastDay;

    LampEditController(Lamps lamps, LampArranging arranging, PastDay pastDay) {
        this.lamps = lamps;
        this.arranging = arranging;
        this.pastDay = pastDay;
    }

    @ModelAttribute("details")
    LampDetails details(@AuthenticationPrincipal SignedIn me, @PathVariable long lampId) {
        return arranging.get(me.siteId(), lampId);
    }

    @ModelAttribute("models")
    List<LampModelFacts> models(@AuthenticationPrincipal SignedIn me) {
        return lamps.models(me.siteId());
    }

    @GetMapping
    String page(@ModelAttribute("details") LampDetails details, Model model) {
        model.addAttribute("form", LampForm.of(details));
        return "lamp/lamp-edit";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long lampId,
            @Valid @ModelAttribute("form") LampForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        pastDay.check("boughtOn", form.day(), me, errors);
        if (errors.hasErrors()) {
            return "lamp/lamp-edit";
        }
        try {
            arranging.change(me.siteId(), lampId, form.versionSeen(), form.lamp());
            return "redirect:/lamps/" + lampId;
        } catch (TakenException taken) {
            errors.rejectValue("tag", "lamp.tag.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            model.addAttribute("theirs", lamps.get(me.siteId(), lampId));
            LampDetails now = arranging.get(me.siteId(), lampId);
            model.addAttribute("theirDetails", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "lamp/lamp-edit";
    }
}
