package dapple.people;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** The key of one person's program at one site. Only its hash is kept; a key is revoked, never deleted. */
@Entity
class ApiToken {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long personId;
    private String name;
    private String tokenHash;
    private Instant createdAt;
    private @Nullable Instant lastUsedAt;
    private @Nullable Instant revokedAt;

    @SuppressWarnings("NullAway.Init")
    protected ApiToken() {}

    ApiToken(KeyOwner owner, String name, String tokenHash, Instant createdAt) {
        this.siteId = owner.siteId();
        this.personId = owner.personId();
        this.name = name;
        this.tokenHash = tokenHash;
        this.createdAt = createdAt;
    }

    long siteId() {
        return siteId;
    }

    long personId() {
        return personId;
    }

    void revoke(Instant at) {
        if (revokedAt == null) {
            this.revokedAt = at;
        }
    }
}
