package dapple.people;

import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keys for programs: made, shown once, looked at by their hash, revoked. */
@Service
public class Keys {
    /** Bytes of chance in a key. Nobody guesses them, so that one fast hash is enough. */
    private static final int BYTES = 32;

    private static final int MOST_OF_A_PERSON = 20;
    private static final Duration USE_IS_NOTED_EVERY = Duration.ofMinutes(1);
    private static final SecureRandom CHANCE = new SecureRandom();

    private final ApiTokenRepository tokens;
    private final Accounts accounts;
    private final Clock clock;

    Keys(ApiTokenRepository tokens, Accounts accounts, Clock clock) {
        this.tokens = tokens;
        this.accounts = accounts;
        this.clock = clock;
    }

    /** Makes a key; what comes back is shown once and kept nowhere. */
    @Transactional
    public String make(KeyOwner owner, String name) {
        byte[] chance = new byte[BYTES];
        CHANCE.nextBytes(chance);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(chance);
        keep(owner, name, key);
        return key;
    }

    /** Keeps a key that is known already; for the demo. */
    @Transactional
    public void keep(KeyOwner owner, String name, String key) {
        if (isFull(owner)) {
            throw new ConflictException("a person has at most " + MOST_OF_A_PERSON + " keys");
        }
        tokens.save(new ApiToken(owner, name, hash(key), clock.instant()));
    }

    @Transactional(readOnly = true)
    boolean isFull(KeyOwner owner) {
        return of(owner).size() >= MOST_OF_A_PERSON;
    }

    /** The keys of a person that work, newest first. */
    @Transactional(readOnly = true)
    List<KeyFacts> of(KeyOwner owner) {
        return tokens.findAllInForce(owner.siteId(), owner.personId());
    }

    @Transactional
    void revoke(KeyOwner owner, long id) {
        tokens.findOwn(owner.siteId(), owner.personId(), id)
                .orElseThrow(NotFoundException::new)
                .revoke(clock.instant());
    }

    /** Whose program this is, as they are now; empty when the key, or its owner, is no longer good. */
    @Transactional
    Optional<SignedIn> holder(String key) {
        String hash = hash(key);
        Optional<SignedIn> holder =
                tokens.findInForce(hash).flatMap(found -> accounts.asOfNow(found.personId(), found.siteId()));
        Instant now = clock.instant();
        holder.ifPresent(found -> tokens.noteUse(hash, now, now.minus(USE_IS_NOTED_EVERY)));
        return holder;
    }

    private static String hash(String key) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException cause) {
            throw new IllegalStateException("every Java has SHA-256", cause);
        }
    }
}
