package dapple.housing;

import dapple.animal.AnimalDetails;
import dapple.animal.AnimalFilter;
import dapple.animal.Animals;
import dapple.animal.BornAbout;
import dapple.animal.RecordEnd;
import dapple.animal.StayFacts;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Page;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** The animals and groups of a site as a file, all that the page would show page by page. */
@Controller
@Allowed(Action.SEE_ANIMALS)
class AnimalsCsvController {
    private final Animals animals;
    private final Enclosures enclosures;
    private final Targets targets;
    private final VetOrders orders;
    private final CsvSheets sheets;
    private final Clock clock;

    AnimalsCsvController(
            Animals animals, Enclosures enclosures, Targets targets, VetOrders orders, CsvSheets sheets, Clock clock) {
        this.animals = animals;
        this.enclosures = enclosures;
        this.targets = targets;
        this.orders = orders;
        this.sheets = sheets;
        this.clock = clock;
    }

    @GetMapping("/animals.csv")
    View all(
            @AuthenticationPrincipal SignedIn me,
            @RequestParam(defaultValue = "") String text,
            @RequestParam(defaultValue = "") String species,
            @RequestParam(defaultValue = "") String enclosure,
            @RequestParam(defaultValue = "") String shown) {
        AnimalFilter filter = AnimalsController.filter(text, species, enclosure, shown);
        Map<Long, SpeciesFacts> kinds = targets.speciesById(me.siteId());
        Map<Long, EnclosureFacts> places =
                enclosures.all(me.siteId()).stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
        return sheets.of(me.site(), "animals", columns(kinds, places), row -> eachPage(me.siteId(), filter, row));
    }

    private void eachPage(long siteId, AnimalFilter filter, Consumer<Row> row) {
        Page<AnimalDetails> page;
        int number = 0;
        do {
            page = animals.found(siteId, filter, number++);
            rows(siteId, page.getContent()).forEach(row);
        } while (page.hasNext());
    }

    private List<Row> rows(long siteId, List<AnimalDetails> found) {
        List<Long> ids = found.stream().map(AnimalDetails::id).toList();
        Map<Long, StayFacts> stays = animals.presentStays(siteId, ids);
        Map<Long, Integer> counts = animals.counts(
                siteId,
                found.stream()
                        .filter(AnimalDetails::isGroup)
                        .map(AnimalDetails::id)
                        .toList(),
                clock.instant());
        Map<Long, OrderFacts> ordered = orders.inForceOf(siteId, ids, clock.instant());
        return found.stream()
                .map(one -> new Row(
                        one,
                        Optional.ofNullable(stays.get(one.id())),
                        one.isGroup() ? Optional.ofNullable(counts.get(one.id())) : Optional.of(1),
                        Optional.ofNullable(ordered.get(one.id()))))
                .toList();
    }

    private static CsvColumns<Row> columns(Map<Long, SpeciesFacts> kinds, Map<Long, EnclosureFacts> places) {
        Function<Row, Optional<EnclosureFacts>> place = row -> row.stay().map(stay -> places.get(stay.enclosureId()));
        return CsvColumns.<Row>none()
                .with("accession-number", row -> row.animal().facts().accessionNumber())
                .with("name", row -> row.animal().facts().name())
                .with(
                        "species",
                        row -> Optional.ofNullable(
                                        kinds.get(row.animal().facts().speciesId()))
                                .map(SpeciesFacts::scientificName))
                .word("animal-kind", "animal-kind.", row -> row.animal().facts().kind())
                .with("count", row -> row.animal().isHere() ? row.count() : Optional.empty())
                .with("born", row -> row.animal().state().born().map(BornAbout::text))
                .word("sex", "sex.", row -> row.animal().state().sex())
                .word("pigment", "pigment.", row -> row.animal().facts().pigment())
                .with("room", place.andThen(found -> found.map(EnclosureFacts::room)))
                .with("enclosure", place.andThen(found -> found.map(EnclosureFacts::code)))
                .with("there-since", row -> row.stay().map(StayFacts::from))
                .word(
                        "vets-order",
                        "order-kind.",
                        row -> row.order().map(order -> order.ordered().kind()))
                .with("vets-order-until", row -> row.order().map(OrderFacts::lastDay))
                .word("record-ended-by", "happening.", row -> row.animal().end().map(RecordEnd::how))
                .with("record-ended", row -> row.animal().end().map(RecordEnd::at))
                .with("note", row -> row.animal().state().note());
    }

    private record Row(
            AnimalDetails animal, Optional<StayFacts> stay, Optional<Integer> count, Optional<OrderFacts> order) {}
}
