package dapple.housing;

import dapple.animal.AnimalDetails;
import dapple.animal.AnimalFilter;
import dapple.animal.AnimalFilter.Shown;
import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.order.VetOrders;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Page;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The animals and groups of a site: how many, where, and under which orders. */
@Controller
@Allowed(Action.SEE_ANIMALS)
class AnimalsController {
    private static final long LAST_PAGE = 10_000;

    private final Animals animals;
    private final Enclosures enclosures;
    private final Targets targets;
    private final VetOrders orders;
    private final Clock clock;

    AnimalsController(Animals animals, Enclosures enclosures, Targets targets, VetOrders orders, Clock clock) {
        this.animals = animals;
        this.enclosures = enclosures;
        this.targets = targets;
        this.orders = orders;
        this.clock = clock;
    }

    /** What cannot be read of the filter is taken as not said. */
    @GetMapping("/animals")
    String list(
            @AuthenticationPrincipal SignedIn me,
            @RequestParam(defaultValue = "") String text,
            @RequestParam(defaultValue = "") String species,
            @RequestParam(defaultValue = "") String enclosure,
            @RequestParam(defaultValue = "") String shown,
            @RequestParam(defaultValue = "") String page,
            Model model) {
        AnimalFilter filter = filter(text, species, enclosure, shown);
        Page<AnimalDetails> found = animals.found(me.siteId(), filter, pageIndex(page));
        model.addAttribute("filter", filter);
        model.addAttribute("animals", found);
        show(me.siteId(), found.getContent(), model);
        return "housing/animals";
    }

    static AnimalFilter filter(String text, String species, String enclosure, String shown) {
        return new AnimalFilter(
                text.replaceAll("\\p{Cntrl}", ""), Asked.id(species), Asked.id(enclosure), shown(shown));
    }

    private void show(long siteId, List<AnimalDetails> found, Model model) {
        List<Long> ids = found.stream().map(AnimalDetails::id).toList();
        List<Long> groups = found.stream()
                .filter(AnimalDetails::isGroup)
                .map(AnimalDetails::id)
                .toList();
        Map<Long, SpeciesFacts> species = targets.speciesById(siteId);
        List<EnclosureFacts> all = enclosures.all(siteId);
        model.addAttribute("speciesById", species);
        model.addAttribute(
                "species",
                species.values().stream()
                        .sorted(Comparator.comparing(SpeciesFacts::scientificName))
                        .toList());
        model.addAttribute("enclosures", all);
        model.addAttribute(
                "enclosuresById", all.stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity())));
        model.addAttribute("stays", animals.presentStays(siteId, ids));
        model.addAttribute("counts", animals.counts(siteId, groups, clock.instant()));
        model.addAttribute("orders", orders.inForceOf(siteId, ids, clock.instant()));
    }

    private static int pageIndex(String asked) {
        return (int) Math.max(0, Math.min(Asked.id(asked), LAST_PAGE) - 1);
    }

    private static Shown shown(String asked) {
        return List.of(Shown.values()).stream()
                .filter(one -> one.name().equals(asked))
                .findFirst()
                .orElse(Shown.HERE);
    }
}
