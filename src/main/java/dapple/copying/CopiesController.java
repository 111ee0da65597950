package dapple.copying;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.rig.FittingFacts;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import dapple.site.Given;
import dapple.site.NotFoundException;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** What a form has copied, with the ways to go on from there. */
@Controller
@Allowed(Action.COPY_ENCLOSURES)
class CopiesController {
    private final Copying copying;
    private final Enclosures enclosures;
    private final Rigs rigs;

    CopiesController(Copying copying, Enclosures enclosures, Rigs rigs) {
        this.copying = copying;
        this.enclosures = enclosures;
        this.rigs = rigs;
    }

    /** One copy as it is now. */
    public record Made(EnclosureFacts enclosure, int points, List<FittingFacts> lamps) {}

    @GetMapping("/enclosures/{enclosureId}/copies/{copyKey}")
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID copyKey,
            Model model) {
        List<EnclosureCopy> copies = copying.made(me.siteId(), enclosureId, copyKey);
        if (copies.isEmpty()) {
            throw new NotFoundException();
        }
        Map<Long, EnclosureFacts> all =
                enclosures.all(me.siteId()).stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
        Map<Long, List<PointFacts>> points = enclosures.pointsByEnclosure(me.siteId());
        Map<Long, Rig> hanging = rigs.nowAtSite(me.siteId());
        model.addAttribute("original", Given.of(all.get(enclosureId)));
        model.addAttribute("copiedAt", copies.get(0).copiedAt());
        model.addAttribute("lamps", copies.get(0).lamps().name());
        model.addAttribute(
                "copies",
                copies.stream()
                        .map(EnclosureCopy::enclosureId)
                        .map(id -> new Made(
                                Given.of(all.get(id)),
                                points.getOrDefault(id, List.of()).size(),
                                hanging.getOrDefault(id, Rig.empty(id)).fittings()))
                        .toList());
        return "copying/copies";
    }
}
