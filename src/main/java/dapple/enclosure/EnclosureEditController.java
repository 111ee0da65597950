package dapple.enclosure;

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

/** One enclosure for those who arrange it: what is said of it, its points, whether it is in use. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}")
class EnclosureEditController {
    private final RoomArranging rooms;
    private final EnclosureArranging enclosures;
    private final PointArranging points;

    EnclosureEditController(RoomArranging rooms, EnclosureArranging enclosures, PointArranging points) {
        this.rooms = rooms;
        this.enclosures = enclosures;
        this.points = points;
    }

    @ModelAttribute("enclosure")
    EnclosureDetails enclosure(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return enclosures.get(me.siteId(), enclosureId);
    }

    @ModelAttribute("rooms")
    List<RoomFacts> rooms(@AuthenticationPrincipal SignedIn me) {
        return rooms.rooms(me.siteId());
    }

    @ModelAttribute("points")
    List<PointDetails> points(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return points.all(me.siteId(), enclosureId);
    }

    @GetMapping("/edit")
    String page(@ModelAttribute("enclosure") EnclosureDetails enclosure, Model model) {
        model.addAttribute("form", EnclosureForm.of(enclosure));
        return "enclosure/edit";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping("/edit")
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @Valid @ModelAttribute("form") EnclosureForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (!errors.hasErrors()) {
            form.check(errors);
        }
        if (errors.hasErrors()) {
            return "enclosure/edit";
        }
        try {
            enclosures.change(me.siteId(), enclosureId, form.versionSeen(), form.change());
            return "redirect:/rooms";
        } catch (TakenException taken) {
            errors.rejectValue("code", "enclosure.code.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            EnclosureDetails now = enclosures.get(me.siteId(), enclosureId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "enclosure/edit";
    }

    @PostMapping("/retirement")
    String retire(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        try {
            enclosures.retire(me.siteId(), enclosureId);
            return "redirect:/rooms";
        } catch (LivedInException livedIn) {
            return "redirect:/enclosures/" + enclosureId + "/edit?lived";
        }
    }

    @PostMapping("/return")
    String returnToUse(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        enclosures.returnToUse(me.siteId(), enclosureId);
        return "redirect:/rooms";
    }
}
