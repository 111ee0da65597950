package dapple.overview;

import dapple.enclosure.PointFacts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.photo.Photos;
import dapple.practice.MeterDoubts;
import dapple.review.EnclosureNow;
import dapple.review.Standings;
import dapple.rig.RigChangeFacts;
import dapple.rig.Rigs;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** One enclosure: how it stands, its points with their newest readings, who lives there. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class EnclosureController {
    private final Standings standings;
    private final Rigs rigs;
    private final Photos photos;
    private final MeterDoubts doubts;

    EnclosureController(Standings standings, Rigs rigs, Photos photos, MeterDoubts doubts) {
        this.standings = standings;
        this.rigs = rigs;
        this.photos = photos;
        this.doubts = doubts;
    }

    @GetMapping("/enclosures/{enclosureId}")
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam Optional<Long> species,
            Model model) {
        EnclosureNow enclosure = standings.of(me.siteId(), enclosureId, me.settings());
        model.addAttribute("standing", enclosure.standing());
        model.addAttribute("points", enclosure.points());
        model.addAttribute("whole", enclosure);
        model.addAttribute("doubts", doubts.at(me.siteId()));
        model.addAttribute("animals", enclosure.animals());
        model.addAttribute("staleAfterDays", me.settings().staleAfterDays());
        model.addAttribute("warmUp", me.settings().warmUpMinutes());
        Optional<RigChangeFacts> unread = rigs.lastLightChange(me.siteId(), enclosureId)
                .filter(change -> enclosure.standing().isUnreadSince(change.at()));
        model.addAttribute("unreadChange", unread);
        model.addAttribute("rows", enclosure.rows(unread.map(RigChangeFacts::at)));
        model.addAttribute(
                "unreadPoints", unread.map(change -> codes(enclosure, change)).orElse(""));
        model.addAttribute("photos", photos.newest(me.siteId(), enclosureId));
        model.addAttribute("asked", species.map(id -> "?species=" + id).orElse(""));
        return "overview/enclosure";
    }

    private static String codes(EnclosureNow enclosure, RigChangeFacts change) {
        return enclosure.standing().pointsUnreadSince(change.at()).stream()
                .map(PointFacts::code)
                .collect(Collectors.joining(", "));
    }
}
