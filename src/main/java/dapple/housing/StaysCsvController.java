package dapple.housing;

import dapple.animal.AnimalDetails;
import dapple.animal.Animals;
import dapple.animal.StayRecord;
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
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Everything that was ever said of where an animal was as a file. */
@Controller
@Allowed(Action.SEE_ANIMALS)
class StaysCsvController {
    private final Animals animals;
    private final Enclosures enclosures;
    private final People people;
    private final CsvSheets sheets;

    StaysCsvController(Animals animals, Enclosures enclosures, People people, CsvSheets sheets) {
        this.animals = animals;
        this.enclosures = enclosures;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/animals/{animalId}/stays.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        AnimalDetails animal = animals.details(me.siteId(), animalId);
        return sheets.of(
                me.site(),
                "stays-" + animal.facts().accessionNumber(),
                columns(me.siteId(), animal),
                animals.stayRecord(me.siteId(), animalId));
    }

    private CsvColumns<StayRecord> columns(long siteId, AnimalDetails animal) {
        Map<Long, String> names = people.names(siteId);
        Map<Long, EnclosureFacts> places =
                enclosures.all(siteId).stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
        Function<StayRecord, Optional<EnclosureFacts>> place =
                row -> Optional.ofNullable(places.get(row.stay().enclosureId()));
        return CsvColumns.<StayRecord>none()
                .with("accession-number", row -> animal.facts().accessionNumber())
                .with("name", row -> animal.facts().name())
                .with("room", place.andThen(found -> found.map(EnclosureFacts::room)))
                .with("enclosure", place.andThen(found -> found.map(EnclosureFacts::code)))
                .with("from", row -> row.stay().from())
                .with("to", row -> row.stay().to())
                .with("reason", StayRecord::reason)
                .with("recorded-at", StayRecord::recordedAt)
                .with("recorded-by", row -> Optional.ofNullable(names.get(row.personId())))
                .with("withdrawn-at", row -> row.withdrawal().map(StayRecord.Withdrawal::at))
                .with("withdrawn-by", row -> row.withdrawal().map(gone -> names.getOrDefault(gone.personId(), "")))
                .with("withdrawn-because", row -> row.withdrawal().map(StayRecord.Withdrawal::reason));
    }
}
