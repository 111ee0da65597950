package dapple.overview;

import dapple.animal.Animals;
import dapple.animal.BodyLengthFacts;
import dapple.animal.Occupant;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.rig.Rigs;
import dapple.rig.TimerWords;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The lamps that hang in one enclosure, and who lives there, as files. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class InsideCsvController {
    private final Enclosures enclosures;
    private final Rigs rigs;
    private final LampsInside lamps;
    private final Animals animals;
    private final VetOrders orders;
    private final TimerWords timerWords;
    private final CsvSheets sheets;
    private final Clock clock;

    InsideCsvController(
            Enclosures enclosures,
            Rigs rigs,
            LampsInside lamps,
            Animals animals,
            VetOrders orders,
            TimerWords timerWords,
            CsvSheets sheets,
            Clock clock) {
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.lamps = lamps;
        this.animals = animals;
        this.orders = orders;
        this.timerWords = timerWords;
        this.sheets = sheets;
        this.clock = clock;
    }

    @GetMapping("/enclosures/{enclosureId}/lamps.csv")
    View lamps(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        Instant now = clock.instant();
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        CsvColumns<LampShown> columns = CsvColumns.<LampShown>none()
                .with("room", row -> enclosure.room())
                .with("enclosure", row -> enclosure.code())
                .with("tag", row -> row.fitting().lamp().tag())
                .with("model", row -> row.fitting().lamp().model().name())
                .with("place", row -> row.fitting().hanging().place())
                .with("there-since", LampShown::since)
                .with("burnt", row -> row.burnHours().map(CsvColumns::computed))
                .with("timer", row -> timerWords.of(row.fitting().hanging().timer()))
                .with("read-since", row -> !row.commissioning());
        return sheets.of(
                me.site(),
                "lamps-" + enclosure.code(),
                columns,
                lamps.of(me, rigs.in(me.siteId(), enclosure, now), now));
    }

    @GetMapping("/enclosures/{enclosureId}/residents.csv")
    View residents(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        Instant now = clock.instant();
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        List<Occupant> occupants = animals.occupants(me.siteId(), enclosureId, now);
        List<Long> ids = occupants.stream().map(Occupant::id).toList();
        Map<Long, Integer> counts = animals.counts(me.siteId(), ids, now);
        Map<Long, OrderFacts> ordered = orders.inForceOf(me.siteId(), ids, now);
        CsvColumns<Occupant> columns = CsvColumns.<Occupant>none()
                .with("room", row -> enclosure.room())
                .with("enclosure", row -> enclosure.code())
                .with("accession-number", row -> row.animal().accessionNumber())
                .with("name", row -> row.animal().name())
                .with("species", Occupant::scientificName)
                .with(
                        "count",
                        row -> row.animal().isGroup() ? Optional.ofNullable(counts.get(row.id())) : Optional.of(1))
                .with("body-length", row -> row.length().map(BodyLengthFacts::metres))
                .with("measured-on", row -> row.length().map(BodyLengthFacts::measuredOn))
                .word(
                        "vets-order",
                        "order-kind.",
                        row -> order(ordered, row).map(one -> one.ordered().kind()))
                .with("vets-order-until", row -> order(ordered, row).map(OrderFacts::lastDay));
        return sheets.of(me.site(), "residents-" + enclosure.code(), columns, occupants);
    }

    private static Optional<OrderFacts> order(Map<Long, OrderFacts> ordered, Occupant row) {
        return Optional.ofNullable(ordered.get(row.id()));
    }
}
