package dapple.desk;

import dapple.draft.DraftFacts;
import dapple.draft.Drafts;
import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Two or three rigs of an enclosure side by side. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class ComparisonController {
    private static final int MOST = 3;

    private final DeskOpening opening;
    private final Drafts drafts;
    private final Comparing comparing;

    ComparisonController(DeskOpening opening, Drafts drafts, Comparing comparing) {
        this.opening = opening;
        this.drafts = drafts;
        this.comparing = comparing;
    }

    @GetMapping("/enclosures/{enclosureId}/desk/comparison")
    String compare(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam(defaultValue = "") List<String> rig,
            @RequestParam(defaultValue = "") String quantity,
            Model model) {
        Desk desk = opening.of(me, enclosureId);
        Quantity shown = DeskForm.of(Map.of("quantity", quantity)).quantity();
        List<String> asked = rig.stream().distinct().toList();
        model.addAttribute("enclosure", desk.installed().enclosure());
        model.addAttribute("asked", asked);
        model.addAttribute("quantity", shown);
        model.addAttribute("quantities", DeskForm.QUANTITIES);
        if (asked.size() >= 2 && asked.size() <= MOST) {
            List<Optional<DraftFacts>> rigs =
                    asked.stream().map(name -> rig(desk, name)).toList();
            model.addAttribute("comparison", comparing.of(desk, rigs, shown));
        }
        return "desk/comparison";
    }

    private Optional<DraftFacts> rig(Desk desk, String name) {
        if (name.equals(NewDraftForm.INSTALLED)) {
            return Optional.empty();
        }
        if (!name.matches("[0-9]{1,18}")) {
            throw new NotFoundException();
        }
        return Optional.of(drafts.get(desk.place(), Long.parseLong(name)));
    }
}
