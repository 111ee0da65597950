package dapple.demo;

import dapple.demo.DemoRows.Space;
import dapple.demo.DemoRows.Spot;
import dapple.enclosure.EnclosureChange;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Served;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Builds the demo's rooms and enclosures: who lives there, what hangs there and what became of it, where it is read. */
@Component
@Profile("demo")
class DemoHouses {
    private final Enclosures enclosures;
    private final Rigs rigs;
    private final DemoAnimals animals;
    private final DemoRigs demoRigs;
    private final DemoOffTimes offTimes;
    private final TransactionTemplate transaction;

    DemoHouses(
            Enclosures enclosures,
            Rigs rigs,
            DemoAnimals animals,
            DemoRigs demoRigs,
            DemoOffTimes offTimes,
            TransactionTemplate transaction) {
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.animals = animals;
        this.demoRigs = demoRigs;
        this.offTimes = offTimes;
        this.transaction = transaction;
    }

    /** Each in a transaction of its own, as it became over the two years. */
    List<DemoHouse> build(DemoStory story, DemoRigs.Stage stage, Consumer<Instant> time) {
        Map<String, Long> rooms = new HashMap<>();
        List<DemoHouse> built = new ArrayList<>();
        for (Space space : story.rows().enclosures()) {
            transaction.executeWithoutResult(unused -> {
                time.accept(story.begin());
                long room = rooms.computeIfAbsent(
                        space.room(), name -> enclosures.addRoom(story.members().siteId(), name, rooms.size()));
                built.add(house(story, stage, new Ground(space, room, built.size()), time));
            });
        }
        return built;
    }

    private DemoHouse house(DemoStory story, DemoRigs.Stage stage, Ground ground, Consumer<Instant> time) {
        Space space = ground.space();
        long enclosure = enclosures.add(
                story.members().siteId(),
                new EnclosureChange(
                        ground.roomId(), space.code(), ground.order(), space.size(), space.front(), space.reach()));
        story.rows().tenantsOf(space).forEach(tenant -> animals.arrive(story, tenant, enclosure, time));
        time.accept(story.begin());
        DemoRigs.Place place = new DemoRigs.Place(space.code(), ground.roomId(), enclosure);
        demoRigs.hang(stage, place, story.begin());
        RigScene rig = RigScene.of(rigs.at(story.members().siteId(), enclosure, story.begin()));
        List<DemoHouse.Place> places = story.rows().pointsOf(space).stream()
                .map(spot -> place(story, rig, spot, add(story, enclosure, spot)))
                .toList();
        demoRigs.swap(stage, place, time);
        offTimes.plan(story, space, enclosure, time);
        time.accept(story.now());
        story.changed(space).ifPresent(at -> demoRigs.change(stage, place, at));
        return new DemoHouse(space, enclosure, places);
    }

    private static DemoHouse.Place place(DemoStory story, RigScene rig, Spot spot, PointFacts point) {
        return new DemoHouse.Place(spot, point, story.past().lit(rig, point));
    }

    private PointFacts add(DemoStory story, long enclosure, Spot spot) {
        long site = story.members().siteId();
        PointFacts point = enclosures.addPoint(site, enclosure, spot.asking(asked(story, spot)));
        spot.serves()
                .ifPresent(name -> enclosures.serve(site, point.id(), Served.species(Set.of(story.speciesId(name)))));
        return point;
    }

    private static List<Quantity> asked(DemoStory story, Spot spot) {
        List<Quantity> asked = new ArrayList<>(List.of(Quantity.UV_INDEX));
        if (spot.firstUvi().isEmpty() && spot.role() == PointRole.BASKING) {
            asked.add(Quantity.ILLUMINANCE);
        }
        story.rows()
                .furtherAt(spot)
                .forEach(further -> asked.add(story.meter(further.meter()).quantity()));
        return asked;
    }

    private record Ground(Space space, long roomId, int order) {}
}
