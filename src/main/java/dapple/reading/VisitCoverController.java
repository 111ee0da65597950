package dapple.reading;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import java.util.UUID;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Says in one press whether the cover was open at a visit. */
@Controller
@Allowed(Action.LOG_READINGS)
class VisitCoverController {
    private final VisitCovers covers;

    VisitCoverController(VisitCovers covers) {
        this.covers = covers;
    }

    @PostMapping("/enclosures/{enclosureId}/visits/{visitKey}/cover")
    String say(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @RequestParam(defaultValue = "NOT_SAID") CoverSaid cover) {
        covers.say(Visitor.of(me), visitKey, enclosureId, cover);
        return "redirect:/enclosures/" + enclosureId + "/visits/" + visitKey;
    }
}
