package dapple.enclosure;

import dapple.site.AuditedSet;
import dapple.site.AuditedThing;
import dapple.site.NotFoundException;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What is on record of who changed a measuring point. */
@Service
public class PointHistory {
    /** Under which the names of the species are to be given that a point serves. */
    public static final String SPECIES = "servedSpecies";

    /** Under which the names of the animals are to be given that a point serves. */
    public static final String ANIMALS = "servedAnimals";

    private static final String SERVES = "serves";
    private static final String QUANTITIES = "quantities";

    private final MeasuringPointRepository points;

    PointHistory(MeasuringPointRepository points) {
        this.points = points;
    }

    /** Without the names of those whom it serves. */
    @Transactional(readOnly = true)
    public AuditedThing of(long siteId, EnclosureFacts enclosure, long pointId) {
        if (points.findInEnclosure(siteId, enclosure.id(), pointId).isEmpty()) {
            throw new NotFoundException();
        }
        return AuditedThing.of(MeasuringPoint.class, pointId)
                .naming("enclosureId", Map.of(enclosure.id(), enclosure.code()))
                .wording("role", "role-of-point.")
                .wording("facing", "facing.")
                .with(set(QUANTITIES, QUANTITIES, "point_quantity_history", "quantity"))
                .wording(QUANTITIES, "quantity.")
                .with(set(SERVES, SPECIES, "point_species_history", "species_id"))
                .with(set(SERVES, ANIMALS, "point_animal_history", "animal_id"));
    }

    private static AuditedSet set(String field, String elements, String table, String column) {
        return new AuditedSet(field, elements, table, "point_id", column);
    }
}
