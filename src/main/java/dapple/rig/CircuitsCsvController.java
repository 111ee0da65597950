package dapple.rig;

import dapple.enclosure.Enclosures;
import dapple.enclosure.RoomFacts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** The circuits of a site as a file. */
@Controller
@Allowed(Action.SEE_STOCK)
class CircuitsCsvController {
    private final Circuits circuits;
    private final Enclosures enclosures;
    private final CsvSheets sheets;

    CircuitsCsvController(Circuits circuits, Enclosures enclosures, CsvSheets sheets) {
        this.circuits = circuits;
        this.enclosures = enclosures;
        this.sheets = sheets;
    }

    @GetMapping("/circuits.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        Map<Long, String> rooms =
                enclosures.rooms(me.siteId()).stream().collect(Collectors.toMap(RoomFacts::id, RoomFacts::name));
        Map<Long, Long> loads = circuits.lampsOn(me.siteId());
        CsvColumns<CircuitFacts> columns = CsvColumns.<CircuitFacts>none()
                .with("circuit", CircuitFacts::name)
                .with("room", circuit -> circuit.roomId().map(rooms::get))
                .with("lamps-on-it", circuit -> loads.getOrDefault(circuit.id(), 0L));
        return sheets.of(me.site(), "circuits", columns, circuits.all(me.siteId()));
    }
}
