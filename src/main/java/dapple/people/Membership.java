package dapple.people;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** One role of one person at one site, open or until a last day. */
@Entity
@Audited
class Membership {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "person_id")
    private Person person;

    private long siteId;

    @Enumerated(EnumType.STRING)
    private Role role;

    private @Nullable LocalDate endsOn;

    @SuppressWarnings("NullAway.Init")
    protected Membership() {}

    Membership(Person person, long siteId, Role role, Optional<LocalDate> lastDay) {
        this.person = person;
        this.siteId = siteId;
        this.role = role;
        this.endsOn = lastDay.orElse(null);
    }

    long siteId() {
        return siteId;
    }

    Role role() {
        return role;
    }

    Optional<LocalDate> endsOn() {
        return Optional.ofNullable(endsOn);
    }

    void endAfter(Optional<LocalDate> lastDay) {
        this.endsOn = lastDay.orElse(null);
    }

    boolean holdsOn(LocalDate day) {
        return endsOn == null || !day.isAfter(endsOn);
    }
}
