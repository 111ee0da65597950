package dapple.enclosure;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** A named place of an enclosure where readings are taken. */
@Entity
@Audited
class MeasuringPoint {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private String code;
    private String place;

    @Enumerated(EnumType.STRING)
    private PointRole role;

    @Enumerated(EnumType.STRING)
    private Facing facing;

    private int walkingOrder;

    @Embedded
    private @Nullable Position position;

    private @Nullable Instant retiredAt;

    @ElementCollection
    @CollectionTable(name = "point_quantity", joinColumns = @JoinColumn(name = "point_id"))
    @Column(name = "quantity")
    @Enumerated(EnumType.STRING)
    private final Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);

    @ElementCollection
    @CollectionTable(name = "point_species", joinColumns = @JoinColumn(name = "point_id"))
    @Column(name = "species_id")
    private final Set<Long> serves = new HashSet<>();

    @ElementCollection
    @CollectionTable(name = "point_animal", joinColumns = @JoinColumn(name = "point_id"))
    @Column(name = "animal_id")
    private final Set<Long> servesAnimals = new HashSet<>();

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected MeasuringPoint() {}

    MeasuringPoint(long siteId, long enclosureId, NewPoint point, int walkingOrder) {
        this.siteId = siteId;
        this.enclosureId = enclosureId;
        this.code = point.code();
        this.place = point.place();
        this.role = point.role();
        this.facing = point.facing();
        this.walkingOrder = walkingOrder;
        this.position = point.position().orElse(null);
        this.quantities.addAll(point.quantities());
    }

    /** What somebody found it to be when they looked again. */
    void describe(NewPoint point, int newWalkingOrder) {
        this.code = point.code();
        this.place = point.place();
        this.role = point.role();
        this.facing = point.facing();
        this.walkingOrder = newWalkingOrder;
        this.position = point.position().orElse(null);
        this.quantities.retainAll(point.quantities());
        this.quantities.addAll(point.quantities());
    }

    void serve(Served served) {
        this.serves.retainAll(served.speciesIds());
        this.serves.addAll(served.speciesIds());
        this.servesAnimals.retainAll(served.animalIds());
        this.servesAnimals.addAll(served.animalIds());
    }

    /** Keeps the first instant if it is retired already. */
    void retire(Instant at) {
        if (retiredAt == null) {
            this.retiredAt = at;
        }
    }

    void returnToUse() {
        this.retiredAt = null;
    }

    PointDetails details() {
        return new PointDetails(facts(), version, walkingOrder, Optional.ofNullable(retiredAt));
    }

    PointFacts facts() {
        return new PointFacts(
                id,
                enclosureId,
                code,
                place,
                role,
                facing,
                Optional.ofNullable(position),
                quantities.stream().sorted().toList(),
                new Served(serves, servesAnimals));
    }
}
