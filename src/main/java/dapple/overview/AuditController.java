package dapple.overview;

import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.practice.MeterDoubts;
import dapple.target.Targets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/** What was where, read, judged and told in an enclosure at the instant that is asked about. */
@Controller
@Allowed(Action.AUDIT)
class AuditController {
    private final Enclosures enclosures;
    private final Auditing auditing;
    private final Targets targets;
    private final People people;
    private final MeterDoubts doubts;
    private final Clock clock;

    AuditController(
            Enclosures enclosures, Auditing auditing, Targets targets, People people, MeterDoubts doubts, Clock clock) {
        this.enclosures = enclosures;
        this.auditing = auditing;
        this.targets = targets;
        this.people = people;
        this.doubts = doubts;
        this.clock = clock;
    }

    @GetMapping("/enclosures/{enclosureId}/audit")
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @ModelAttribute("form") AuditForm form,
            BindingResult errors,
            Model model) {
        model.addAttribute("enclosure", enclosures.get(me.siteId(), enclosureId));
        if (errors.getTarget() != null) {
            form.instant(clock.instant(), me.zone(), errors)
                    .map(at -> auditing.at(me.siteId(), enclosureId, at, LocalDate.ofInstant(at, me.zone())))
                    .ifPresent(sheet -> show(me, sheet, model));
        }
        return "overview/audit";
    }

    private void show(SignedIn me, AuditSheet sheet, Model model) {
        Map<Long, String> names = people.names(me.siteId());
        model.addAttribute("sheet", sheet);
        model.addAttribute("doubts", doubts.at(me.siteId()));
        model.addAttribute("at", sheet.at());
        model.addAttribute("said", sheet.rig().changes());
        model.addAttribute("names", names);
        model.addAttribute("people", names);
        model.addAttribute("species", targets.speciesById(me.siteId()));
    }
}
