package dapple.exposure;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalHistory;
import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.order.Mates;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.reading.Readings;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One animal with the light measured where it lived. */
@Controller
@Allowed(Action.SEE_ANIMALS)
@RequestMapping("/animals")
class AnimalController {
    private final Animals animals;
    private final Enclosures enclosures;
    private final Targets targets;
    private final Readings readings;
    private final VetOrders orders;
    private final Mates mates;
    private final Clock clock;

    AnimalController(
            Animals animals,
            Enclosures enclosures,
            Targets targets,
            Readings readings,
            VetOrders orders,
            Mates mates,
            Clock clock) {
        this.animals = animals;
        this.enclosures = enclosures;
        this.targets = targets;
        this.readings = readings;
        this.orders = orders;
        this.mates = mates;
        this.clock = clock;
    }

    @GetMapping("/{animalId}")
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @RequestParam(defaultValue = "1") int page,
            Model model) {
        AnimalHistory history = animals.historyOf(me.siteId(), animalId);
        AnimalFacts animal = history.animal();
        List<OrderFacts> open = orders.openOf(me.siteId(), animalId, clock.instant());
        model.addAttribute("animal", animal);
        model.addAttribute("history", history);
        model.addAttribute("orders", open);
        model.addAttribute("conflicts", mates.conflicts(me.siteId(), animal, open, clock.instant()));
        model.addAttribute("species", targets.speciesById(me.siteId()).get(animal.speciesId()));
        model.addAttribute("target", target(me.siteId(), animal.speciesId()));
        model.addAttribute("stays", history.stays());
        model.addAttribute("enclosures", byId(me.siteId()));
        model.addAttribute(
                "readings", readings.duringStays(me.siteId(), animalId, animal.speciesId(), Math.max(0, page - 1)));
        return "exposure/animal";
    }

    private Optional<Target> target(long siteId, long speciesId) {
        return Optional.ofNullable(
                targets.inForce(siteId, List.of(speciesId), clock.instant()).get(speciesId));
    }

    private Map<Long, EnclosureFacts> byId(long siteId) {
        return enclosures.all(siteId).stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
    }
}
