package dapple.reading;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.Given;
import jakarta.servlet.http.HttpSession;
import jakarta.validation.Valid;
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

    VisitEndController(VisitWalk walks, Readings readings, VisitNoting noting, People people) {
        this.walks = walks;
        this.readings = readings;
        this.noting = noting;
        this.people = people;
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
        return show(me, enclosureId, visitKey, model);
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
            return show(me, enclosureId, visitKey, model);
        }
        noting.note(
                Visitor.of(me),
                visitKey,
                enclosureId,
                Given.of(form.key()),
                form.note().strip());
        return "redirect:/enclosures/" + enclosureId + "/visits/" + visitKey;
    }

    private String show(SignedIn me, long enclosureId, UUID visitKey, Model model) {
        Walk walk = walks.at(me.siteId(), enclosureId, visitKey);
        model.addAttribute("walk", walk);
        model.addAttribute("rows", StepRow.of(walk, readings.latestIn(me.siteId(), enclosureId, walk.points())));
        model.addAttribute("notes", noting.of(me.siteId(), visitKey));
        model.addAttribute("names", people.names(me.siteId()));
        return "reading/visit";
    }
}
