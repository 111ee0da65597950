package dapple.rig;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import java.time.Clock;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The rig of an enclosure: what hangs and stands there now and how it came to be. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}")
class RigController {
    private final Rigs rigs;
    private final RigLog rigLog;
    private final Enclosures enclosures;
    private final People people;
    private final Clock clock;

    RigController(Rigs rigs, RigLog rigLog, Enclosures enclosures, People people, Clock clock) {
        this.rigs = rigs;
        this.rigLog = rigLog;
        this.enclosures = enclosures;
        this.people = people;
        this.clock = clock;
    }

    @GetMapping("/rig")
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam(defaultValue = "1") int page,
            Model model) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        Rig rig = rigs.in(me.siteId(), enclosure, clock.instant());
        long count = rigs.changeCount(me.siteId(), enclosureId);
        int pages = (int) Math.max(1, (count + Rigs.PAGE - 1) / Rigs.PAGE);
        int shown = Math.max(1, Math.min(page, pages));
        model.addAttribute("enclosure", enclosure);
        model.addAttribute("rig", rig);
        model.addAttribute("scene", RigScene.of(rig));
        List<RigChangeFacts> log = rigs.changes(me.siteId(), enclosureId, shown - 1);
        model.addAttribute("log", log);
        model.addAttribute("touched", rigLog.parts(me.siteId(), log));
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute("warmUp", me.settings().warmUpMinutes());
        model.addAttribute("page", shown);
        model.addAttribute("pages", pages);
        return "rig/rig";
    }
}
