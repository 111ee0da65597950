package dapple.enclosure;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Enters a measuring point of an enclosure. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}/points/new")
class NewPointController {
    private final EnclosureArranging enclosures;
    private final PointArranging points;

    NewPointController(EnclosureArranging enclosures, PointArranging points) {
        this.enclosures = enclosures;
        this.points = points;
    }

    @ModelAttribute("enclosure")
    EnclosureDetails enclosure(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return enclosures.get(me.siteId(), enclosureId);
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
    String fresh(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        int last = points.all(me.siteId(), enclosureId).stream()
                .mapToInt(PointDetails::walkingOrder)
                .max()
                .orElse(0);
        model.addAttribute("form", PointForm.empty(last + 1));
        return "enclosure/point-new";
    }

    @PostMapping
    String add(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @Valid @ModelAttribute("form") PointForm form,
            BindingResult errors) {
        if (!errors.hasErrors()) {
            PointForm.POSITION.check(errors);
        }
        if (errors.hasErrors()) {
            return "enclosure/point-new";
        }
        try {
            points.add(me.siteId(), enclosureId, form.change());
            return "redirect:/enclosures/" + enclosureId + "/edit";
        } catch (TakenException taken) {
            errors.rejectValue("code", "point.code.taken");
            return "enclosure/point-new";
        }
    }
}
