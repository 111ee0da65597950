package dapple.importing;

import dapple.animal.AnimalFacts;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.RoomFacts;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.meter.MeterFacts;
import dapple.people.PersonFacts;
import dapple.species.SpeciesFacts;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a site has on record, each by its key.
 *
 * @param points by enclosure and code, enclosure and place, enclosure and role
 * @param pointCodes those that an enclosure has used, in small letters, by key of the enclosure
 * @param species by scientific and by common name
 * @param animals by accession number, and by name, species and enclosure
 * @param hanging the key of the enclosure that a lamp hangs in, by key of the lamp
 * @param fitted what hung since when: key of the lamp and instant
 * @param covers by enclosure and name, of those that lie there now
 * @param readers names and sign-in names of the site's people, in small letters
 */
record Known(
        Map<String, RoomFacts> rooms,
        Map<String, EnclosureFacts> enclosures,
        Map<String, Long> points,
        Map<String, Set<String>> pointCodes,
        Map<String, SpeciesFacts> species,
        Map<String, LampModelFacts> models,
        Map<String, LampFacts> lamps,
        Map<String, MeterFacts> meters,
        Map<String, PersonFacts> people,
        Map<String, AnimalFacts> animals,
        Map<String, String> hanging,
        Set<String> fitted,
        Set<String> covers,
        Set<String> readers) {

    static <T> Optional<T> in(Map<String, T> known, String key) {
        return Optional.ofNullable(known.get(key));
    }
}
