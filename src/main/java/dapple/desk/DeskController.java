package dapple.desk;

import dapple.desk.DeskReading.Read;
import dapple.draft.DraftFacts;
import dapple.draft.DraftRig;
import dapple.draft.DraftSeen;
import dapple.draft.Drafts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.site.ConflictException;
import dapple.site.TakenException;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The desk of one draft. Nothing is stored until it is saved. */
@Controller
@RequestMapping("/enclosures/{enclosureId}/desk/{draftId}")
class DeskController {
    private static final String REMOVE = "remove ";

    private final DeskOpening desks;
    private final DeskPage page;
    private final DeskReading reading;
    private final Adding adding;
    private final Drafts drafts;

    DeskController(DeskOpening desks, DeskPage page, DeskReading reading, Adding adding, Drafts drafts) {
        this.desks = desks;
        this.page = page;
        this.reading = reading;
        this.adding = adding;
        this.drafts = drafts;
    }

    @GetMapping
    @Allowed(Action.SEE_ENCLOSURES)
    String desk(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @RequestParam(defaultValue = "") String quantity,
            Model model) {
        Desk desk = desks.of(me, enclosureId);
        DraftFacts draft = drafts.get(desk.place(), draftId);
        DeskForm asked = DeskForm.of(Map.of("quantity", quantity));
        return page.show(desk, draft, DeskFields.of(draft, asked.quantity()), model);
    }

    /** What the form says is computed alone, while it is being changed. */
    @PostMapping("/look")
    @Allowed(Action.CHANGE_RIGS)
    String look(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @RequestParam Map<String, String> sent,
            Model model) {
        Sent asked = sent(desks.lately(me, enclosureId), draftId, sent);
        return page.look(asked.desk(), asked.form(), asked.read(page), model);
    }

    /** What falls on one place, which the form names as x, y and z. Asking stores nothing. */
    @PostMapping("/at")
    @Allowed(Action.USE_ENGINE)
    String at(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @RequestParam Map<String, String> sent,
            Model model) {
        Sent asked = sent(desks.lately(me, enclosureId), draftId, sent);
        return page.at(asked.desk(), asked.form(), asked.read(page), model);
    }

    @PostMapping
    @Allowed(Action.CHANGE_RIGS)
    String act(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @RequestParam Map<String, String> sent,
            Model model,
            HttpServletResponse response) {
        Sent asked = sent(desks.of(me, enclosureId), draftId, sent);
        String action = asked.form().field("action");
        return action.equals("save")
                ? save(asked.desk(), asked.draft(), asked.form(), model, response)
                : page.show(asked.desk(), asked.draft(), changed(asked, action), model);
    }

    /** A form that was sent, and what it is about. */
    private record Sent(Desk desk, DraftFacts draft, DeskForm form) {
        Read read(DeskPage page) {
            return page.read(desk, draft, form);
        }
    }

    private Sent sent(Desk desk, long draftId, Map<String, String> fields) {
        return new Sent(desk, drafts.get(desk.place(), draftId), DeskForm.of(fields));
    }

    private DeskForm changed(Sent asked, String action) {
        DeskForm form = asked.form();
        EnclosureScene installed = asked.desk().installed();
        if (action.startsWith(REMOVE)) {
            return form.without(action.substring(REMOVE.length()));
        }
        return switch (action) {
            case "addLamp" -> adding.lamp(form, asked.desk(), asked.draft().rig());
            case "addCover" -> adding.cover(form, installed);
            case "addFurniture" -> adding.furniture(form, installed);
            default -> form;
        };
    }

    private String save(Desk desk, DraftFacts draft, DeskForm form, Model model, HttpServletResponse response) {
        Read read = page.read(desk, draft, form);
        Map<String, String> wrong = new LinkedHashMap<>(read.wrong());
        reading.wrongName(form.field("name")).ifPresent(message -> wrong.put("name", message));
        Optional<DraftRig> rig = wrong.isEmpty() ? read.rig() : Optional.empty();
        if (rig.isEmpty()) {
            return page.show(desk, draft, form, new Read(read.rig(), wrong), model);
        }
        try {
            DraftSeen seen = new DraftSeen(draft.id(), form.version());
            drafts.change(
                    desk.place(),
                    seen,
                    form.field("name").strip(),
                    rig.get(),
                    desk.me().personId());
            return "redirect:/enclosures/" + desk.enclosureId() + "/desk/" + draft.id() + "?saved&quantity="
                    + form.quantity();
        } catch (TakenException taken) {
            wrong.put("name", reading.say("desk.name.taken"));
            return page.show(desk, draft, form, new Read(rig, wrong), model);
        } catch (ObjectOptimisticLockingFailureException | ConflictException changedMeanwhile) {
            return stale(desk, draft.id(), form, model, response);
        }
    }

    /** The draft as it is now stands beside the form, which keeps what was typed and may be saved over it. */
    private String stale(Desk desk, long draftId, DeskForm form, Model model, HttpServletResponse response) {
        DraftFacts theirs = drafts.get(desk.place(), draftId);
        model.addAttribute("theirs", theirs);
        model.addAttribute("theirRig", theirs.rig().rig(desk.enclosureId(), desk.stock(), desk.now()));
        response.setStatus(HttpServletResponse.SC_CONFLICT);
        return page.show(desk, theirs, form.with("version", String.valueOf(theirs.version())), model);
    }
}
