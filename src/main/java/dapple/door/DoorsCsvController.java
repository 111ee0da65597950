package dapple.door;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** The doors of a site with their codes as a file, in walking order. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class DoorsCsvController {
    private final Doors doors;
    private final Enclosures enclosures;
    private final People people;
    private final CsvSheets sheets;

    DoorsCsvController(Doors doors, Enclosures enclosures, People people, CsvSheets sheets) {
        this.doors = doors;
        this.enclosures = enclosures;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/doors.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        DoorList list = new DoorList(enclosures.inWalkingOrder(me.siteId()), doors.open(me.siteId()));
        Map<Long, String> names = people.names(me.siteId());
        CsvColumns<EnclosureFacts> columns = CsvColumns.<EnclosureFacts>none()
                .with("room", EnclosureFacts::room)
                .with("enclosure", EnclosureFacts::code)
                .with("door-code", door(list, one -> one.code().grouped()))
                .with("since", door(list, DoorFacts::givenAt))
                .with("given-by", door(list, one -> names.getOrDefault(one.givenBy(), "")));
        return sheets.of(me.site(), "doors", columns, list.inUse());
    }

    private static Function<EnclosureFacts, Optional<?>> door(DoorList list, Function<DoorFacts, ?> part) {
        return row -> Optional.ofNullable(list.codes().get(row.id())).map(part);
    }
}
