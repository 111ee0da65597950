package dapple.lamp;

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

/** Who changed what of a lamp or a lamp model, and when. */
@Controller
@Allowed(Action.AUDIT)
class LampHistoryController {
    private static final String HERE = "lamps";

    private final Lamps lamps;
    private final People people;
    private final Histories histories;

    LampHistoryController(Lamps lamps, People people, Histories histories) {
        this.lamps = lamps;
        this.people = people;
        this.histories = histories;
    }

    @GetMapping({"/lamps/{lampId}/history", "/lamps/{lampId}/history.csv"})
    ModelAndView ofLamp(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long lampId,
            @RequestParam(defaultValue = "1") int page) {
        HistoryHead head = new HistoryHead(lamps.get(me.siteId(), lampId).tag(), HERE, "/lamps/" + lampId);
        Map<Long, String> models =
                lamps.models(me.siteId()).stream().collect(Collectors.toMap(LampModelFacts::id, LampModelFacts::name));
        AuditedThing thing = AuditedThing.of(Lamp.class, lampId)
                .naming("lampModelId", models)
                .wording("retiredFor", "lamp.retired-for.");
        return histories.show(me, head, thing, page);
    }

    /** With what its lamps are said to give. */
    @GetMapping({"/lamp-models/{modelId}/history", "/lamp-models/{modelId}/history.csv"})
    ModelAndView ofModel(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long modelId,
            @RequestParam(defaultValue = "1") int page) {
        String name = lamps.model(me.siteId(), modelId).name();
        HistoryHead head = new HistoryHead(name, HERE, "/lamp-models/" + modelId);
        AuditedThing thing = AuditedThing.of(LampModel.class, modelId)
                .with(new AuditedPart(LampModelOutput.class, "lampModelId", me.siteId()))
                .naming("waivedBy", people.names(me.siteId()))
                .wording("lampClass", "lamp-class.")
                .wording("shapeKind", "lamp-shape.")
                .wording("quantity", "lamp.quantity.")
                .wording("mark", "mark.");
        return histories.show(me, head, thing, page);
    }
}
