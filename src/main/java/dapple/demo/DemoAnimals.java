package dapple.demo;

import dapple.animal.AnimalKeeping;
import dapple.animal.AnimalState;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.BodyLengthFacts;
import dapple.animal.Happened;
import dapple.animal.Reach;
import dapple.animal.Sex;
import dapple.demo.DemoRows.Tenant;
import dapple.order.NewOrder;
import dapple.order.Ordered;
import dapple.order.Ordering;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's invented animals; one has less pigment, and a vet's order for it. */
@Component
@Profile("demo")
class DemoAnimals {
    private static final int ORDERED_DAYS = 130;
    private static final double CEILING = 0.9;

    private final AnimalKeeping keeping;
    private final Animals animals;
    private final Ordering ordering;

    DemoAnimals(AnimalKeeping keeping, Animals animals, Ordering ordering) {
        this.keeping = keeping;
        this.animals = animals;
        this.ordering = ordering;
    }

    /** Enters an animal or a group, and brings it to its enclosure; a vet's order follows later. */
    void arrive(DemoStory story, Tenant tenant, long enclosureId, Consumer<Instant> time) {
        DemoTeam.Members members = story.members();
        Instant at = story.begin();
        AnimalState state = new AnimalState(
                tenant.accessionNumber(),
                tenant.name(),
                story.speciesId(tenant.scientificName()),
                Sex.UNKNOWN,
                Optional.empty(),
                tenant.pigment(),
                new Reach(tenant.reachMetres()),
                "");
        Happened begun = new Happened(at, "Counted at the first survey", UUID.randomUUID(), members.supervisor());
        long animal = tenant.number()
                .map(number -> keeping.addGroup(members.siteId(), state, number, begun))
                .orElseGet(() -> keeping.add(members.siteId(), state, members.supervisor()));
        animals.move(members.siteId(), new Arrival(animal, enclosureId, at, members.supervisor()));
        BodyLengthFacts length = new BodyLengthFacts(tenant.lengthMetres(), LocalDate.ofInstant(at, ZoneOffset.UTC));
        keeping.addLength(members.siteId(), animal, length, members.supervisor());
        if (tenant.pigment().isLessThanNormal()) {
            time.accept(story.told());
            order(members, animal, story.told());
            time.accept(at);
        }
    }

    private void order(DemoTeam.Members members, long animal, Instant at) {
        ordering.place(
                members.siteId(),
                new NewOrder(
                        animal,
                        new Ordered.Cap(CEILING),
                        "Little pigment: spare its skin and eyes until it is seen again",
                        Optional.empty(),
                        LocalDate.ofInstant(at, ZoneOffset.UTC).plusDays(ORDERED_DAYS),
                        UUID.randomUUID(),
                        members.vet()));
    }
}
