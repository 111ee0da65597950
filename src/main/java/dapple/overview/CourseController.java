package dapple.overview;

import dapple.animal.Animals;
import dapple.animal.Housed;
import dapple.drawing.StripSize;
import dapple.drawing.TimeStrip;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.overview.Courses.Alone;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.prediction.SpeciesNeed.UnderOrder;
import dapple.species.SpeciesFacts;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The UV index at the basking point of one enclosure over half a year. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class CourseController {
    private final Enclosures enclosures;
    private final Animals animals;
    private final VetOrders orders;
    private final Courses courses;
    private final Clock clock;

    CourseController(Enclosures enclosures, Animals animals, VetOrders orders, Courses courses, Clock clock) {
        this.enclosures = enclosures;
        this.animals = animals;
        this.orders = orders;
        this.courses = courses;
        this.clock = clock;
    }

    @GetMapping("/enclosures/{enclosureId}/course")
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam Optional<Long> species,
            Model model) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        model.addAttribute("enclosure", enclosure);
        Optional<PointFacts> basking = enclosures.pointsOf(me.siteId(), enclosureId).stream()
                .filter(point -> point.role() == PointRole.BASKING)
                .filter(point -> point.quantities().contains(Quantity.UV_INDEX))
                .findFirst();
        model.addAttribute("point", basking);
        basking.ifPresent(point -> show(me, point, species, model));
        return "overview/course";
    }

    private void show(SignedIn me, PointFacts point, Optional<Long> species, Model model) {
        Instant now = clock.instant();
        LocalDate today = LocalDate.ofInstant(now, me.zone());
        List<Housed> served = animals.housedIn(me.siteId(), point.enclosureId(), now).stream()
                .filter(one -> point.serves(one.species().id(), one.animal().id()))
                .toList();
        Optional<SpeciesFacts> shown = served.stream()
                .map(Housed::species)
                .filter(kind -> species.isEmpty() || species.get().equals(kind.id()))
                .findFirst();
        Optional<Alone> alone = shown.flatMap(kind -> alone(me, served, kind));
        Course course = courses.of(me, point, shown.map(SpeciesFacts::id), alone, today);
        model.addAttribute("species", shown.map(SpeciesFacts::scientificName));
        model.addAttribute("bandOf", alone.flatMap(only -> shown.map(SpeciesFacts::id)));
        model.addAttribute("ordered", ordered(me, served, now));
        model.addAttribute("long", TimeStrip.of(course.history(), StripSize.LONG, today));
        model.addAttribute("short", TimeStrip.of(course.history(), StripSize.SHORT, today));
        model.addAttribute("course", course);
    }

    private Optional<Alone> alone(SignedIn me, List<Housed> served, SpeciesFacts kind) {
        List<Housed> ofItsKind =
                served.stream().filter(one -> one.species().id() == kind.id()).toList();
        return ofItsKind.size() == 1
                ? ofItsKind.stream()
                        .findFirst()
                        .map(one -> new Alone(
                                one.from(),
                                orders.ofAnimal(me.siteId(), one.animal().id())))
                : Optional.empty();
    }

    private List<UnderOrder> ordered(SignedIn me, List<Housed> served, Instant now) {
        List<Long> ids = served.stream().map(one -> one.animal().id()).toList();
        Map<Long, OrderFacts> inForce = orders.inForceOf(me.siteId(), ids, now);
        return served.stream()
                .map(Housed::animal)
                .flatMap(animal ->
                        Optional.ofNullable(inForce.get(animal.id()))
                                .map(order -> new UnderOrder(animal, order))
                                .stream())
                .toList();
    }
}
