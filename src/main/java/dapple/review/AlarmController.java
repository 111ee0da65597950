package dapple.review;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** Somebody has seen an alarm: the banner goes, the finding stays. */
@Controller
@Allowed(Action.ANSWER_ALARMS)
class AlarmController {
    private final Alarms alarms;

    AlarmController(Alarms alarms) {
        this.alarms = alarms;
    }

    @PostMapping("/alarms/{alarmId}/seen")
    String see(@AuthenticationPrincipal SignedIn me, @PathVariable long alarmId) {
        return "redirect:/enclosures/" + alarms.see(me.siteId(), alarmId, me.personId());
    }
}
