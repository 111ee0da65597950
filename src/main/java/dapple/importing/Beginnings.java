package dapple.importing;

import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.meter.Meters;
import dapple.species.SpeciesKeeping;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** How far a site's collection is on record. */
@Component
class Beginnings {
    private final Enclosures enclosures;
    private final SpeciesKeeping species;
    private final Animals animals;
    private final Meters meters;

    Beginnings(Enclosures enclosures, SpeciesKeeping species, Animals animals, Meters meters) {
        this.enclosures = enclosures;
        this.species = species;
        this.animals = animals;
        this.meters = meters;
    }

    /**
     * What is there.
     *
     * @param pointless enclosures in use without a measuring point
     */
    record There(int enclosures, long pointless, int points, int species, int animals, int meters) {}

    There at(long siteId) {
        List<EnclosureFacts> inUse = enclosures.inWalkingOrder(siteId);
        Map<Long, List<PointFacts>> points = enclosures.pointsByEnclosure(siteId);
        return new There(
                inUse.size(),
                inUse.stream().filter(one -> !points.containsKey(one.id())).count(),
                points.values().stream().mapToInt(List::size).sum(),
                species.all(siteId).size(),
                animals.here(siteId).size(),
                meters.inUse(siteId).size());
    }
}
