package dapple.people;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.OneToMany;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernate.envers.Audited;
import org.hibernate.envers.NotAudited;
import org.jspecify.annotations.Nullable;

/** An account. People are deactivated, never deleted: what they recorded keeps its author. */
@Entity
@Audited
class Person {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private String signInName;
    private String name;

    @NotAudited
    private String passwordHash;

    @NotAudited
    private @Nullable String resetCodeHash;

    @NotAudited
    private @Nullable Instant resetExpiresAt;

    private Instant createdAt;
    private @Nullable Instant deactivatedAt;
    private @Nullable Instant erasedAt;

    @OneToMany(mappedBy = "person", cascade = CascadeType.ALL, orphanRemoval = true, fetch = FetchType.LAZY)
    private final List<Membership> memberships = new ArrayList<>();

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Person() {}

    Person(String signInName, String name, String passwordHash, Instant createdAt) {
        this.signInName = signInName;
        this.name = name;
        this.passwordHash = passwordHash;
        this.createdAt = createdAt;
    }

    long id() {
        return id;
    }

    long version() {
        return version;
    }

    String signInName() {
        return signInName;
    }

    String name() {
        return name;
    }

    String passwordHash() {
        return passwordHash;
    }

    Optional<Instant> deactivatedAt() {
        return Optional.ofNullable(deactivatedAt);
    }

    void rename(String newName) {
        this.name = newName;
    }

    void deactivate(Instant at) {
        this.deactivatedAt = at;
        cancelReset();
    }

    void reactivate() {
        this.deactivatedAt = null;
    }

    Optional<Instant> erasedAt() {
        return Optional.ofNullable(erasedAt);
    }

    /** The names go for good; nobody signs in with this account again. */
    void erase(ErasedName instead, String hashOfNoPassword, Instant at) {
        this.signInName = instead.signInName();
        this.name = instead.name();
        this.passwordHash = hashOfNoPassword;
        this.erasedAt = at;
        if (deactivatedAt == null) {
            this.deactivatedAt = at;
        }
        cancelReset();
    }

    void changePassword(String hash) {
        this.passwordHash = hash;
        cancelReset();
    }

    void allowReset(String codeHash, Instant until) {
        this.resetCodeHash = codeHash;
        this.resetExpiresAt = until;
    }

    private void cancelReset() {
        this.resetCodeHash = null;
        this.resetExpiresAt = null;
    }

    /** The hash of a reset code that still holds. */
    Optional<String> resetCodeHash(Instant now) {
        boolean holds = deactivatedAt == null && resetExpiresAt != null && now.isBefore(resetExpiresAt);
        return Optional.ofNullable(holds ? resetCodeHash : null);
    }

    List<Membership> memberships() {
        return List.copyOf(memberships);
    }

    List<Membership> membershipsAt(long siteId) {
        return memberships.stream()
                .filter(membership -> membership.siteId() == siteId)
                .toList();
    }

    Set<Role> rolesAt(long siteId) {
        return membershipsAt(siteId).stream().map(Membership::role).collect(Collectors.toSet());
    }

    /** Gives these roles at a site, takes away all others there; they end after a last day, or never. */
    void takeRoles(long siteId, Set<Role> roles, Optional<LocalDate> lastDay) {
        memberships.removeIf(held -> held.siteId() == siteId && !roles.contains(held.role()));
        membershipsAt(siteId).forEach(held -> held.endAfter(lastDay));
        Set<Role> held = rolesAt(siteId);
        roles.stream()
                .filter(role -> !held.contains(role))
                .forEach(role -> memberships.add(new Membership(this, siteId, role, lastDay)));
    }

    Optional<LocalDate> lastDayAt(long siteId) {
        return membershipsAt(siteId).stream().findFirst().flatMap(Membership::endsOn);
    }
}
