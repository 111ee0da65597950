package dapple.importing;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Housed;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.lamp.Lamps;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.People;
import dapple.people.PersonFacts;
import dapple.rig.CoverFacts;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Looks up what a site has on record, by the keys of sheets. */
@Component
class SiteRecord {
    private final Enclosures enclosures;
    private final SpeciesKeeping species;
    private final Lamps lamps;
    private final Meters meters;
    private final People people;
    private final Animals animals;
    private final Rigs rigs;
    private final Clock clock;

    SiteRecord(
            Enclosures enclosures,
            SpeciesKeeping species,
            Lamps lamps,
            Meters meters,
            People people,
            Animals animals,
            Rigs rigs,
            Clock clock) {
        this.enclosures = enclosures;
        this.species = species;
        this.lamps = lamps;
        this.meters = meters;
        this.people = people;
        this.animals = animals;
        this.rigs = rigs;
        this.clock = clock;
    }

    Known at(long siteId) {
        Map<Long, String> enclosureKeys = enclosures.all(siteId).stream()
                .collect(Collectors.toMap(EnclosureFacts::id, one -> Keys.of(one.code())));
        List<LampFacts> allLamps = lamps.all(siteId);
        List<SpeciesFacts> allSpecies = species.all(siteId);
        Map<String, SpeciesFacts> speciesByName = byKey(allSpecies, SpeciesFacts::commonName);
        speciesByName.putAll(byKey(allSpecies, SpeciesFacts::scientificName));
        List<PersonFacts> everybody = people.at(siteId);
        return new Known(
                byKey(enclosures.rooms(siteId), room -> room.name()),
                byKey(enclosures.all(siteId), EnclosureFacts::code),
                points(siteId, enclosureKeys),
                codes(siteId, enclosureKeys),
                speciesByName,
                byKey(lamps.models(siteId), LampModelFacts::name),
                byKey(allLamps, LampFacts::tag),
                byKey(meters.byId(siteId).values(), MeterFacts::code),
                byKey(everybody, PersonFacts::signInName),
                animals(siteId, enclosureKeys),
                hanging(siteId, allLamps, enclosureKeys),
                fitted(siteId, enclosureKeys.keySet()),
                covers(siteId, enclosureKeys),
                everybody.stream()
                        .flatMap(person -> Stream.of(Keys.of(person.name()), Keys.of(person.signInName())))
                        .collect(Collectors.toSet()));
    }

    private static <T> Map<String, T> byKey(Collection<T> all, Function<T, String> name) {
        Map<String, T> found = new HashMap<>();
        all.forEach(one -> found.putIfAbsent(Keys.of(name.apply(one)), one));
        return found;
    }

    private Map<String, Long> points(long siteId, Map<Long, String> enclosureKeys) {
        Map<String, Long> found = new HashMap<>();
        enclosures
                .pointsByEnclosure(siteId)
                .forEach((enclosure, points) -> points.forEach(point ->
                        found.putIfAbsent(Keys.role(key(enclosureKeys, enclosure), point.role()), point.id())));
        List<PointFacts> all = enclosures.pointsById(siteId).values().stream()
                .sorted(Comparator.comparingLong(PointFacts::id))
                .toList();
        all.forEach(point ->
                found.putIfAbsent(Keys.within(key(enclosureKeys, point.enclosureId()), point.code()), point.id()));
        all.forEach(point ->
                found.putIfAbsent(Keys.within(key(enclosureKeys, point.enclosureId()), point.place()), point.id()));
        return found;
    }

    private static String key(Map<Long, String> enclosureKeys, long enclosureId) {
        return enclosureKeys.getOrDefault(enclosureId, "");
    }

    private Map<String, Set<String>> codes(long siteId, Map<Long, String> enclosureKeys) {
        return enclosures.pointsById(siteId).values().stream()
                .collect(Collectors.groupingBy(
                        point -> key(enclosureKeys, point.enclosureId()),
                        Collectors.mapping(point -> Keys.of(point.code()), Collectors.toSet())));
    }

    private Map<String, AnimalFacts> animals(long siteId, Map<Long, String> enclosureKeys) {
        Map<String, AnimalFacts> found = byKey(animals.all(siteId), AnimalFacts::accessionNumber);
        for (List<Housed> together :
                animals.byEnclosure(siteId, clock.instant()).values()) {
            for (Housed one : together) {
                String where = key(enclosureKeys, one.enclosureId());
                String called = one.animal().name();
                found.putIfAbsent(Keys.animal(called, Keys.of(one.species().scientificName()), where), one.animal());
                found.putIfAbsent(Keys.animal(called, Keys.of(one.species().commonName()), where), one.animal());
            }
        }
        return found;
    }

    private Map<String, String> hanging(long siteId, List<LampFacts> all, Map<Long, String> enclosureKeys) {
        Map<Long, Long> where = rigs.whereLampsHang(siteId);
        return all.stream()
                .filter(lamp -> where.containsKey(lamp.id()))
                .collect(Collectors.toMap(
                        lamp -> Keys.of(lamp.tag()),
                        lamp -> key(enclosureKeys, where.getOrDefault(lamp.id(), 0L)),
                        (one, other) -> one));
    }

    private Set<String> fitted(long siteId, Set<Long> enclosureIds) {
        return enclosureIds.isEmpty()
                ? Set.of()
                : rigs.lamps(siteId, enclosureIds, Instant.EPOCH.minusSeconds(1L << 31), clock.instant()).stream()
                        .map(lamp -> fitted(Keys.of(lamp.tag()), lamp.from()))
                        .collect(Collectors.toSet());
    }

    static String fitted(String lamp, Instant from) {
        return lamp + "\n" + from;
    }

    private Set<String> covers(long siteId, Map<Long, String> enclosureKeys) {
        return rigs.nowAtSite(siteId).values().stream()
                .map(Rig::covers)
                .flatMap(List::stream)
                .map((CoverFacts one) -> Keys.within(
                        key(enclosureKeys, one.enclosureId()), one.cover().name()))
                .collect(Collectors.toSet());
    }
}
