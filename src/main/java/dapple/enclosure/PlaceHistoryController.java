package dapple.enclosure;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Histories;
import dapple.people.SignedIn;
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

/** Who changed what of a room or an enclosure, and when. */
@Controller
@Allowed(Action.AUDIT)
class PlaceHistoryController {
    private static final String HERE = "rooms";

    private final RoomArranging rooms;
    private final EnclosureArranging enclosures;
    private final Histories histories;

    PlaceHistoryController(RoomArranging rooms, EnclosureArranging enclosures, Histories histories) {
        this.rooms = rooms;
        this.enclosures = enclosures;
        this.histories = histories;
    }

    @GetMapping({"/rooms/{roomId}/history", "/rooms/{roomId}/history.csv"})
    ModelAndView ofRoom(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long roomId,
            @RequestParam(defaultValue = "1") int page) {
        RoomFacts room = rooms.get(me.siteId(), roomId);
        HistoryHead head = new HistoryHead(room.name(), HERE, "/rooms");
        return histories.show(me, head, AuditedThing.of(Room.class, roomId), page);
    }

    @GetMapping({"/enclosures/{enclosureId}/history", "/enclosures/{enclosureId}/history.csv"})
    ModelAndView ofEnclosure(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam(defaultValue = "1") int page) {
        EnclosureDetails enclosure = enclosures.get(me.siteId(), enclosureId);
        Map<Long, String> names =
                rooms.rooms(me.siteId()).stream().collect(Collectors.toMap(RoomFacts::id, RoomFacts::name));
        HistoryHead head = new HistoryHead(enclosure.state().code(), HERE, "/enclosures/" + enclosureId);
        AuditedThing thing = AuditedThing.of(Enclosure.class, enclosureId)
                .naming("room", names)
                .wording("front", "front.")
                .wording("reachKind", "enclosure.reach.");
        return histories.show(me, head, thing, page);
    }
}
