package dapple.desk;

import dapple.draft.DraftFacts;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.DraftSeen;
import dapple.draft.Drafts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.site.NotFoundException;
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
import org.springframework.web.bind.annotation.RequestParam;

/** The drafts of an enclosure, beside what hangs there: listed with their checks, begun, discarded. */
@Controller
@RequestMapping("/enclosures/{enclosureId}/desk")
class DraftsController {
    private static final String VIEW = "desk/drafts";

    private final DeskOpening desks;
    private final Looking looking;
    private final Drafts drafts;
    private final People people;

    DraftsController(DeskOpening desks, Looking looking, Drafts drafts, People people) {
        this.desks = desks;
        this.looking = looking;
        this.drafts = drafts;
        this.people = people;
    }

    /** A draft with what it would give. */
    public record Listed(DraftFacts draft, TargetLine line) {}

    @GetMapping
    @Allowed(Action.SEE_ENCLOSURES)
    String list(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        model.addAttribute("form", NewDraftForm.empty());
        return show(desks.of(me, enclosureId), model);
    }

    @PostMapping
    @Allowed(Action.CHANGE_RIGS)
    String begin(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @Valid @ModelAttribute("form") NewDraftForm form,
            BindingResult errors,
            Model model) {
        Desk desk = desks.of(me, enclosureId);
        if (errors.hasErrors()) {
            return show(desk, model);
        }
        try {
            long made = drafts.make(desk.place(), form.name().strip(), begun(desk, form), me.personId());
            return "redirect:/enclosures/" + enclosureId + "/desk/" + made;
        } catch (TakenException taken) {
            errors.rejectValue("name", "desk.name.taken");
        } catch (NotFoundException strange) {
            errors.rejectValue("from", "desk.from.wrong");
        }
        return show(desk, model);
    }

    private DraftRig begun(Desk desk, NewDraftForm form) {
        return switch (form.from()) {
            case NewDraftForm.INSTALLED -> DraftRig.of(desk.installed().rig().rig());
            case NewDraftForm.EMPTY -> DraftRig.empty();
            default -> drafts.get(desk.place(), form.draftId()).rig();
        };
    }

    @PostMapping("/{draftId}/discard")
    @Allowed(Action.CHANGE_RIGS)
    String discard(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @RequestParam long version) {
        DraftSeen seen = new DraftSeen(draftId, version);
        drafts.discard(new DraftPlace(me.siteId(), enclosureId), seen, me.personId());
        return "redirect:/enclosures/" + enclosureId + "/desk?discarded";
    }

    private String show(Desk desk, Model model) {
        List<DraftFacts> all = drafts.of(desk.place());
        model.addAttribute("enclosure", desk.installed().enclosure());
        model.addAttribute("scene", desk.installed());
        model.addAttribute("installed", line(desk.installed()));
        model.addAttribute(
                "open",
                all.stream()
                        .filter(DraftFacts::isOpen)
                        .map(draft -> new Listed(draft, line(desk.under(draft.rig()))))
                        .toList());
        model.addAttribute(
                "closed", all.stream().filter(draft -> !draft.isOpen()).toList());
        model.addAttribute("names", people.names(desk.me().siteId()));
        return VIEW;
    }

    private TargetLine line(EnclosureScene scene) {
        return TargetLine.of(scene, looking.light(scene));
    }
}
