package dapple.round;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Histories;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.AuditedPart;
import dapple.site.AuditedThing;
import dapple.site.HistoryHead;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Who changed what of a round, its doors and its walks, and when. */
@Controller
@Allowed(Action.AUDIT)
class RoundHistoryController {
    private final RoundArranging arranging;
    private final Enclosures enclosures;
    private final People people;
    private final Histories histories;

    RoundHistoryController(RoundArranging arranging, Enclosures enclosures, People people, Histories histories) {
        this.arranging = arranging;
        this.enclosures = enclosures;
        this.people = people;
        this.histories = histories;
    }

    @GetMapping({"/rounds/{planId}/history", "/rounds/{planId}/history.csv"})
    ModelAndView history(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long planId,
            @RequestParam(defaultValue = "1") int page) {
        PlanFacts plan = arranging.get(me.siteId(), planId);
        Map<Long, String> names = people.names(me.siteId());
        Map<Long, String> codes = enclosures.all(me.siteId()).stream()
                .collect(Collectors.toMap(EnclosureFacts::id, EnclosureFacts::code));
        HistoryHead head = new HistoryHead(plan.title(), "rounds", "/rounds/" + planId);
        AuditedThing thing = AuditedThing.of(RoundPlan.class, planId)
                .with(new AuditedPart(RoundStop.class, "planId", me.siteId()))
                .with(new AuditedPart(RoundWalk.class, "planId", me.siteId()))
                .naming("planId", Map.of(planId, plan.title()))
                .naming("enclosureId", codes)
                .naming("personId", names)
                .naming("givenPersonId", names)
                .naming("givenBy", names)
                .naming("begunBy", names)
                .naming("excusedBy", names)
                .wording("role", "role.")
                .wording("givenRole", "role.")
                .wording("excuse", "round.excuse.")
                .wording("cadence", "round.cadence.");
        return histories.show(me, head, thing, page);
    }
}
