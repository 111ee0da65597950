package dapple.desk;

import dapple.draft.DraftFacts;
import dapple.draft.DraftSeen;
import dapple.draft.Drafts;
import dapple.draft.Installing;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.rig.RigEntry;
import dapple.rig.RigRefusedException;
import dapple.site.ConflictException;
import dapple.site.Formats;
import dapple.site.Given;
import dapple.site.When;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
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

/** Makes a draft the installed rig: what to do by hand, the cautions, and one step to record it. */
@Controller
@Allowed(Action.CHANGE_RIGS)
@RequestMapping("/enclosures/{enclosureId}/desk/{draftId}/installation")
class InstallController {
    private final DeskOpening opening;
    private final Drafts drafts;
    private final Installing installing;
    private final InstallPage page;
    private final Formats formats;
    private final Clock clock;

    InstallController(
            DeskOpening opening, Drafts drafts, Installing installing, InstallPage page, Formats formats, Clock clock) {
        this.opening = opening;
        this.drafts = drafts;
        this.installing = installing;
        this.page = page;
        this.formats = formats;
        this.clock = clock;
    }

    @GetMapping
    String form(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            Model model) {
        Desk desk = opening.of(me, enclosureId);
        DraftFacts draft = drafts.get(desk.place(), draftId);
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), me.zone()).truncatedTo(ChronoUnit.MINUTES);
        model.addAttribute("form", new InstallForm(null, null, null, now, null, null));
        model.addAttribute("entryKey", UUID.randomUUID());
        return page.show(desk, draft, model);
    }

    @PostMapping
    String install(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @Valid @ModelAttribute("form") InstallForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Desk desk = opening.of(me, enclosureId);
        DraftFacts draft = drafts.get(desk.place(), draftId);
        model.addAttribute(
                "entryKey", Optional.ofNullable(errors.getFieldValue("key")).orElse(""));
        Optional<Instant> at = errors.getTarget() == null
                ? Optional.empty()
                : When.until(clock.instant(), me.zone()).read("at", form.at(), form.atWhich(), errors);
        if (errors.hasErrors() || at.isEmpty()) {
            return page.show(desk, draft, model);
        }
        try {
            installing.install(new DraftSeen(draftId, Given.of(form.version())), entry(desk, form, at.get()));
            return "redirect:/enclosures/" + enclosureId + "/rig?changed";
        } catch (RigRefusedException refused) {
            refuse(refused, me, errors);
            return page.show(desk, draft, model);
        } catch (ObjectOptimisticLockingFailureException | ConflictException stale) {
            model.addAttribute("stale", true);
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return page.show(opening.of(me, enclosureId), drafts.get(desk.place(), draftId), model);
        }
    }

    private static RigEntry entry(Desk desk, InstallForm form, Instant at) {
        return new RigEntry(
                desk.me().siteId(),
                desk.enclosureId(),
                at,
                Optional.ofNullable(form.note()).orElse("").strip(),
                desk.me().personId(),
                Given.of(form.key()),
                Optional.of(Given.of(form.seen())));
    }

    private void refuse(RigRefusedException refused, SignedIn me, BindingResult errors) {
        String when = refused.when()
                .map(instant -> formats.dayAndTime(instant, me.zone()))
                .orElse("");
        String code = "rig.refused." + refused.reason();
        errors.rejectValue("at", code, new Object[] {refused.where(), when}, code);
    }
}
