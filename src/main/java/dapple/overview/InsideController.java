package dapple.overview;

import dapple.animal.Animals;
import dapple.animal.Occupant;
import dapple.animal.ReachInside;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.order.VetOrders;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import dapple.site.Caution;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** What hangs and stands in one enclosure, and who lives there. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class InsideController {
    private final Enclosures enclosures;
    private final Rigs rigs;
    private final LampsInside lamps;
    private final Animals animals;
    private final VetOrders orders;
    private final Clock clock;

    InsideController(
            Enclosures enclosures, Rigs rigs, LampsInside lamps, Animals animals, VetOrders orders, Clock clock) {
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.lamps = lamps;
        this.animals = animals;
        this.orders = orders;
        this.clock = clock;
    }

    @GetMapping("/enclosures/{enclosureId}/lamps")
    String lamps(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        Instant now = clock.instant();
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        Rig rig = rigs.in(me.siteId(), enclosure, now);
        model.addAttribute("enclosure", enclosure);
        model.addAttribute("rig", rig);
        model.addAttribute("lamps", lamps.of(me, rig, now));
        model.addAttribute("cautions", cautions(rig));
        model.addAttribute("warmUp", me.settings().warmUpMinutes());
        return "overview/lamps";
    }

    /** Of all lamps, each once. */
    private static Set<Caution> cautions(Rig rig) {
        return rig.fittings().stream()
                .flatMap(fitting -> fitting.lamp().model().cautions().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @GetMapping("/enclosures/{enclosureId}/residents")
    String residents(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        Instant now = clock.instant();
        List<Occupant> occupants = animals.occupants(me.siteId(), enclosureId, now);
        List<Long> ids = occupants.stream().map(Occupant::id).toList();
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        model.addAttribute("enclosure", enclosure);
        model.addAttribute("occupants", occupants);
        model.addAttribute("reach", ReachInside.of(enclosure.reach(), occupants));
        model.addAttribute("counts", animals.counts(me.siteId(), ids, now));
        model.addAttribute("orders", orders.inForceOf(me.siteId(), ids, now));
        return "overview/residents";
    }
}
