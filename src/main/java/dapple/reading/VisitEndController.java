package dapple.reading;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.Given;
import jakarta.servlet.http.HttpSession;
import jakarta.validation.Valid;
import java.util.List;
import java.util.UUID;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The end of a visit: what was read and what was not, and what else there was to note. */
@Controller
@Allowed(Action.LOG_READINGS)
@RequestMapping("/enclosures/{enclosureId}/visits/{visitKey}")
class VisitEndController {
    private final VisitWalk walks;
    private final Readings readings;
    private final VisitNoting noting;
    private final People people;
    private final BurningLamps lamps;
    private final VisitCovers covers;

    VisitEndController(
            VisitWalk walks,
            Readings readings,
            VisitNoting noting,
            People people,
            BurningLamps lamps,
            VisitCovers covers) {
        this.walks = walks;
        this.readings = readings;
        this.noting = noting;
        this.people = people;
        this.lamps = lamps;
        this.covers = covers;
    }

    /** The session is asked for before the page goes out, since its form comes late in it. */
    @GetMapping
    String summary(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            HttpSession session,
            Model model) {
        model.addAttribute("form", NoteForm.empty());
        return show(me, enclosureId, visitKey, session, model);
    }

    @PostMapping("/notes")
    String note(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @Valid @ModelAttribute("form") NoteForm form,
            BindingResult errors,
            HttpSession session,
            Model model) {
        if (errors.hasErrors()) {
            return show(me, enclosureId, visitKey, session, model);
        }
        noting.note(
                Visitor.of(me),
                visitKey,
                enclosureId,
                Given.of(form.key()),
                form.note().strip());
        return "redirect:/enclosures/" + enclosureId + "/visits/" + visitKey;
    }

    private String show(SignedIn me, long enclosureId, UUID visitKey, HttpSession session, Model model) {
        Walk walk = walks.at(me.siteId(), enclosureId, visitKey);
        model.addAttribute("walk", walk);
        model.addAttribute("begunFrom", BegunFrom.pathFor(session, visitKey));
        model.addAttribute("rows", rows(me, walk));
        model.addAttribute("notes", noting.of(me.siteId(), visitKey));
        model.addAttribute(
                "cover",
                covers.of(me.siteId(), visitKey).map(VisitCoverFacts::cover).orElse(CoverSaid.NOT_SAID));
        model.addAttribute("coverWords", CoverSaid.values());
        model.addAttribute("names", people.names(me.siteId()));
        return "reading/visit";
    }

    private List<StepRow> rows(SignedIn me, Walk walk) {
        long enclosureId = walk.enclosure().id();
        List<StepRow> rows = StepRow.of(walk, readings.latestIn(me.siteId(), enclosureId, walk.points()));
        Burning burning = lamps.around(
                me,
                enclosureId,
                rows.stream().flatMap(row -> row.takenAt().stream()).toList());
        return rows.stream().map(row -> row.under(burning)).toList();
    }
}
