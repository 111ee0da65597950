package dapple.housing;

import dapple.animal.AnimalDetails;
import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Chronicle;
import dapple.animal.Chronicled;
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

/** What happened to an animal or a group as a file. */
@Controller
@Allowed(Action.SEE_ANIMALS)
class EventsCsvController {
    private final Animals animals;
    private final Chronicle chronicle;
    private final People people;
    private final CsvSheets sheets;

    EventsCsvController(Animals animals, Chronicle chronicle, People people, CsvSheets sheets) {
        this.animals = animals;
        this.chronicle = chronicle;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/animals/{animalId}/events.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        AnimalDetails animal = animals.details(me.siteId(), animalId);
        Map<Long, String> names = people.names(me.siteId());
        CsvColumns<Chronicled> columns = CsvColumns.<Chronicled>none()
                .with("accession-number", row -> animal.facts().accessionNumber())
                .with("name", row -> animal.facts().name())
                .with("at", row -> row.event().at())
                .word("what", "happening.", row -> row.event().kind())
                .with("number", row -> row.event().number())
                .with("count-after", Chronicled::countAfter)
                .with("other-record", row -> row.related().map(AnimalFacts::accessionNumber))
                .with("reason", row -> row.event().reason())
                .with("recorded-at", row -> row.event().recordedAt())
                .with(
                        "recorded-by",
                        row -> Optional.ofNullable(names.get(row.event().personId())));
        return sheets.of(
                me.site(), "events-" + animal.facts().accessionNumber(), columns, chronicle.of(me.siteId(), animalId));
    }
}
