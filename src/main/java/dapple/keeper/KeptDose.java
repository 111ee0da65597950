package dapple.keeper;

import dapple.light.dose.KeeperDose;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** What fell on a person at one point. */
@Entity
@Immutable
class KeptDose {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long personId;
    private UUID entryKey;
    private Instant takenAt;
    private double uvIndexMinutes;
    private double actinicJoulesPerSquareMetre;
    private double uvaJoulesPerSquareMetre;
    private boolean assumed;

    @SuppressWarnings("NullAway.Init")
    protected KeptDose() {}

    KeptDose(Taken taken, KeeperDose dose) {
        this.siteId = taken.siteId();
        this.personId = taken.personId();
        this.entryKey = taken.key();
        this.takenAt = taken.at();
        this.uvIndexMinutes = dose.uvIndexMinutes();
        this.actinicJoulesPerSquareMetre = dose.actinicJoulesPerSquareMetre();
        this.uvaJoulesPerSquareMetre = dose.uvaJoulesPerSquareMetre();
        this.assumed = dose.isAssumed();
    }

    Instant takenAt() {
        return takenAt;
    }

    KeeperDose dose() {
        return new KeeperDose(uvIndexMinutes, actinicJoulesPerSquareMetre, uvaJoulesPerSquareMetre, assumed);
    }
}
