package dapple.order;

import dapple.animal.AnimalDetails;
import dapple.animal.Animals;
import dapple.light.judging.Band;
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

/** All orders of vets for an animal or a group as a file. */
@Controller
@Allowed(Action.SEE_ANIMALS)
class OrdersCsvController {
    private final VetOrders orders;
    private final Animals animals;
    private final People people;
    private final CsvSheets sheets;

    OrdersCsvController(VetOrders orders, Animals animals, People people, CsvSheets sheets) {
        this.orders = orders;
        this.animals = animals;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/animals/{animalId}/orders.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        AnimalDetails animal = animals.details(me.siteId(), animalId);
        return sheets.of(
                me.site(),
                "orders-" + animal.facts().accessionNumber(),
                columns(animal, people.names(me.siteId())),
                orders.ofAnimal(me.siteId(), animalId));
    }

    private static CsvColumns<OrderFacts> columns(AnimalDetails animal, Map<Long, String> names) {
        return CsvColumns.<OrderFacts>none()
                .with("accession-number", row -> animal.facts().accessionNumber())
                .with("name", row -> animal.facts().name())
                .word("vets-order", "order-kind.", row -> row.ordered().kind())
                .with(
                        "order-basking-low",
                        row -> own(row).map(Ordered.OwnLimits::limits)
                                .map(limits -> limits.basking())
                                .filter(Band::hasLow)
                                .map(Band::low))
                .with(
                        "order-basking-high",
                        row -> own(row).map(order -> order.limits().basking().high()))
                .with(
                        "order-shade-high",
                        row -> own(row).map(order -> order.limits().shadeHigh()))
                .with("order-ceiling", row -> ceiling(row.ordered()))
                .with("reason", OrderFacts::reason)
                .with("from", OrderFacts::from)
                .with("last-day", OrderFacts::lastDay)
                .with("to", OrderFacts::to)
                .with("recorded-at", OrderFacts::recordedAt)
                .with("recorded-by", row -> Optional.ofNullable(names.get(row.personId())))
                .with("from-the-group", row -> row.inheritedFrom().isPresent())
                .with("ended-at", row -> row.earlyEnd().map(OrderFacts.EarlyEnd::recordedAt))
                .with("ended-by", row -> row.earlyEnd().map(end -> names.getOrDefault(end.personId(), "")))
                .with("ended-because", row -> row.earlyEnd().map(OrderFacts.EarlyEnd::reason));
    }

    private static Optional<Ordered.OwnLimits> own(OrderFacts row) {
        return row.ordered() instanceof Ordered.OwnLimits own ? Optional.of(own) : Optional.empty();
    }

    private static double ceiling(Ordered ordered) {
        if (ordered instanceof Ordered.UvOff) {
            return Ordered.UvOff.MOST;
        }
        return ordered.limits(Optional.empty()).ceiling();
    }
}
