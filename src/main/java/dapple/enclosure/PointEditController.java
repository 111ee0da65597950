package dapple.enclosure;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
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

/** One measuring point for those who arrange it: what is said of it, whether it is in use. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}/points/{pointId}")
class PointEditController {
    private final EnclosureArranging enclosures;
    private final PointArranging points;

    PointEditController(EnclosureArranging enclosures, PointArranging points) {
        this.enclosures = enclosures;
        this.points = points;
    }

    @ModelAttribute("enclosure")
    EnclosureDetails enclosure(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return enclosures.get(me.siteId(), enclosureId);
    }

    @ModelAttribute("point")
    PointDetails point(
            @AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, @PathVariable long pointId) {
        return points.get(me.siteId(), enclosureId, pointId);
    }

    @ModelAttribute("kinds")
    PointRole[] kinds() {
        return PointRole.values();
    }

    @ModelAttribute("askable")
    List<Quantity> askable() {
        return Quantity.measuredInTheField();
    }

    @ModelAttribute("facings")
    Facing[] facings() {
        return Facing.values();
    }

    @GetMapping
    String page(@ModelAttribute("point") PointDetails point, Model model) {
        model.addAttribute("form", PointForm.of(point));
        return "enclosure/point";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String change(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "point", binding = false) PointDetails point,
            @Valid @ModelAttribute("form") PointForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (!errors.hasErrors()) {
            PointForm.POSITION.check(errors);
        }
        if (errors.hasErrors()) {
            return "enclosure/point";
        }
        PointFacts at = point.facts();
        try {
            points.change(me.siteId(), at, form.versionSeen(), form.change());
            return back(at.enclosureId());
        } catch (TakenException taken) {
            errors.rejectValue("code", "point.code.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            PointDetails now = points.get(me.siteId(), at.enclosureId(), at.id());
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "enclosure/point";
    }

    @PostMapping("/retirement")
    String retire(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, @PathVariable long pointId) {
        points.retire(me.siteId(), enclosureId, pointId);
        return back(enclosureId);
    }

    @PostMapping("/return")
    String returnToUse(
            @AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, @PathVariable long pointId) {
        points.returnToUse(me.siteId(), enclosureId, pointId);
        return back(enclosureId);
    }

    private static String back(long enclosureId) {
        return "redirect:/enclosures/" + enclosureId + "/edit";
    }
}
