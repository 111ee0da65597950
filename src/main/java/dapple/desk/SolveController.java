package dapple.desk;

import dapple.draft.DraftFacts;
import dapple.draft.DraftRig;
import dapple.draft.DraftSeen;
import dapple.draft.Drafts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.Given;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Map;
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

/** Asks a draft what would give what is wanted, and puts the answer into it. */
@Controller
@RequestMapping("/enclosures/{enclosureId}/desk/{draftId}/solving")
class SolveController {
    private final DeskOpening opening;
    private final Drafts drafts;
    private final SolvePage page;

    SolveController(DeskOpening opening, Drafts drafts, SolvePage page) {
        this.opening = opening;
        this.drafts = drafts;
        this.page = page;
    }

    @GetMapping
    @Allowed(Action.SEE_ENCLOSURES)
    String ask(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @RequestParam Map<String, String> sent,
            Model model) {
        Desk desk = opening.of(me, enclosureId);
        return page.show(desk, drafts.get(desk.place(), draftId), sent, model);
    }

    @PostMapping
    @Allowed(Action.CHANGE_RIGS)
    String take(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @Valid @ModelAttribute("take") TakeForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Desk desk = opening.of(me, enclosureId);
        DraftFacts draft = drafts.get(desk.place(), draftId);
        Optional<DraftRig> rig = errors.hasErrors() ? Optional.empty() : Taking.of(desk, draft, form);
        if (rig.isEmpty()) {
            return refused(HttpServletResponse.SC_BAD_REQUEST, desk, draft, model, response);
        }
        try {
            drafts.change(
                    desk.place(),
                    new DraftSeen(draftId, Given.of(form.version())),
                    draft.name(),
                    rig.get(),
                    me.personId());
            return "redirect:/enclosures/" + enclosureId + "/desk/" + draftId + "?saved";
        } catch (ObjectOptimisticLockingFailureException | ConflictException stale) {
            return refused(HttpServletResponse.SC_CONFLICT, desk, drafts.get(desk.place(), draftId), model, response);
        }
    }

    private String refused(int status, Desk desk, DraftFacts draft, Model model, HttpServletResponse response) {
        response.setStatus(status);
        model.addAttribute(
                "refused", status == HttpServletResponse.SC_CONFLICT ? "desk.solve.stale" : "desk.solve.wrong");
        return page.show(desk, draft, Map.of(), model);
    }
}
