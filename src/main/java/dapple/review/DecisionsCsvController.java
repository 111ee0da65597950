package dapple.review;

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
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Everything that was ever decided about an enclosure as a file. */
@Controller
@Allowed(Action.SEE_REVIEW)
class DecisionsCsvController {
    private final Deciding deciding;
    private final Enclosures enclosures;
    private final People people;
    private final CsvSheets sheets;

    DecisionsCsvController(Deciding deciding, Enclosures enclosures, People people, CsvSheets sheets) {
        this.deciding = deciding;
        this.enclosures = enclosures;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/review/{enclosureId}.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        Map<Long, String> names = people.names(me.siteId());
        CsvColumns<DecisionFacts> columns = CsvColumns.<DecisionFacts>none()
                .with("room", row -> enclosure.room())
                .with("enclosure", row -> enclosure.code())
                .with("decided-at", DecisionFacts::madeAt)
                .with("decided-by", row -> Optional.ofNullable(names.get(row.madeBy())))
                .word("decision", "decision.kind.", DecisionFacts::kind)
                .word("state", "state.", DecisionFacts::state)
                .with("in-words", DecisionFacts::text)
                .with("last-day", DecisionFacts::until)
                .with("given-to-person", row -> row.givenTo().map(id -> names.getOrDefault(id, "")))
                .with("own-reading", DecisionFacts::ownReading);
        return sheets.of(me.site(), "decisions-" + enclosure.code(), columns, deciding.of(me.siteId(), enclosureId));
    }
}
