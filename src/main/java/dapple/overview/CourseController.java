package dapple.overview;

import dapple.animal.Animals;
import dapple.animal.Occupant;
import dapple.drawing.StripSize;
import dapple.drawing.TimeStrip;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.prediction.SpeciesNeed.UnderOrder;
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
        List<Occupant> served = animals.occupants(me.siteId(), point.enclosureId(), now).stream()
                .filter(occupant -> point.serves(occupant.animal().speciesId(), occupant.id()))
                .toList();
        Optional<Occupant> shown = served.stream()
                .filter(occupant -> species.isEmpty()
                        || species.get().equals(occupant.animal().speciesId()))
                .findFirst();
        Course course =
                courses.of(me, point, shown.map(occupant -> occupant.animal().speciesId()), today);
        model.addAttribute("species", shown.map(Occupant::scientificName));
        model.addAttribute("ordered", ordered(me, served, now));
        model.addAttribute("long", TimeStrip.of(course.history(), StripSize.LONG, today));
        model.addAttribute("short", TimeStrip.of(course.history(), StripSize.SHORT, today));
        model.addAttribute("course", course);
    }

    private List<UnderOrder> ordered(SignedIn me, List<Occupant> served, Instant now) {
        Map<Long, OrderFacts> inForce =
                orders.inForceOf(me.siteId(), served.stream().map(Occupant::id).toList(), now);
        return served.stream()
                .flatMap(
                        occupant -> Optional.ofNullable(inForce.get(occupant.id()))
                                .map(order -> new UnderOrder(occupant.animal(), order))
                                .stream())
                .toList();
    }
}
