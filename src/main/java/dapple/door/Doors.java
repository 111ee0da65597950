package dapple.door;

import dapple.door.DoorFacts.Replaced;
import dapple.enclosure.Enclosures;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Gives enclosures the codes of their doors, one that counts for each. */
@Service
public class Doors {
    private final DoorRepository doors;
    private final Enclosures enclosures;
    private final Clock clock;
    private final RandomGenerator chance = new SecureRandom();

    Doors(DoorRepository doors, Enclosures enclosures, Clock clock) {
        this.doors = doors;
        this.enclosures = enclosures;
        this.clock = clock;
    }

    /** The codes that count at a site, by enclosure. */
    @Transactional(readOnly = true)
    public Map<Long, DoorFacts> open(long siteId) {
        return byEnclosure(doors.open(siteId));
    }

    /** Every code that an enclosure has or had, newest first. */
    @Transactional(readOnly = true)
    public List<DoorFacts> of(long siteId, long enclosureId) {
        return doors.ofEnclosure(siteId, enclosureId).stream().map(Door::facts).toList();
    }

    /** The door with a code, also with one that was replaced. */
    @Transactional(readOnly = true)
    public Optional<DoorFacts> find(long siteId, DoorCode code) {
        return doors.findAtSite(siteId, code.text()).map(Door::facts);
    }

    /** The codes of some enclosures; those that have none are given one. */
    @Transactional
    public Map<Long, DoorFacts> coded(long siteId, Collection<Long> enclosureIds, long personId) {
        if (enclosureIds.isEmpty()) {
            return Map.of();
        }
        Set<Long> without = new TreeSet<>(enclosureIds);
        without.removeAll(byEnclosure(doors.openOf(siteId, enclosureIds)).keySet());
        without.forEach(enclosureId -> giveFirst(siteId, enclosureId, personId));
        return byEnclosure(doors.openOf(siteId, enclosureIds));
    }

    /** Enclosures are held in the order of their ids, so that two who print at once never wait for each other. */
    private void giveFirst(long siteId, long enclosureId, long personId) {
        enclosures.lock(siteId, enclosureId);
        if (doors.openOf(siteId, Set.of(enclosureId)).isEmpty()) {
            give(siteId, enclosureId, personId);
        }
    }

    private void give(long siteId, long enclosureId, long personId) {
        DoorCode code = DoorCode.random(chance);
        while (doors.existsByCode(code.text())) {
            code = DoorCode.random(chance);
        }
        doors.saveAndFlush(new Door(siteId, enclosureId, code, clock.instant(), personId));
    }

    /**
     * Gives an enclosure a new code in place of the one that counts.
     *
     * @param seen the code that is to be replaced; if it was already, nothing is done
     */
    @Transactional
    public void renew(long siteId, long enclosureId, DoorCode seen, String reason, long personId) {
        enclosures.lock(siteId, enclosureId);
        Optional<Door> open = doors.openOf(siteId, Set.of(enclosureId)).stream()
                .filter(door -> door.facts().code().equals(seen))
                .findFirst();
        open.ifPresent(door -> {
            door.replace(new Replaced(clock.instant(), personId, reason));
            doors.saveAndFlush(door);
            give(siteId, enclosureId, personId);
        });
    }

    private static Map<Long, DoorFacts> byEnclosure(List<Door> some) {
        return some.stream().map(Door::facts).collect(Collectors.toMap(DoorFacts::enclosureId, Function.identity()));
    }
}
