package dapple.rig;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvSheets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Everything that was done to the rig of an enclosure as a file, oldest first. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class RigCsvController {
    /** Before any record and after it, within what every database takes. */
    private static final Instant BEGIN = Instant.parse("1900-01-01T00:00:00Z");

    private static final Instant END = Instant.parse("2300-01-01T00:00:00Z");

    private final RigChangesTold changes;
    private final Enclosures enclosures;
    private final People people;
    private final CsvSheets sheets;

    RigCsvController(RigChangesTold changes, Enclosures enclosures, People people, CsvSheets sheets) {
        this.changes = changes;
        this.enclosures = enclosures;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/enclosures/{enclosureId}/rig.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        return sheets.of(
                me.site(),
                "rig-" + enclosure.code(),
                RigChangesTold.columns(Map.of(enclosureId, enclosure), people.names(me.siteId())),
                changes.between(me.siteId(), List.of(enclosureId), BEGIN, END));
    }
}
