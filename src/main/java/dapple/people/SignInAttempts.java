package dapple.people;

import io.github.bucket4j.Bucket;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;

/**
 * Slows guessing of passwords and codes: 10 failures for a name, 50 from an address, each refilled within a quarter of
 * an hour. Kept in memory, for the most recent names and addresses.
 */
@Component
class SignInAttempts {
    private static final int FOR_A_NAME = 10;
    private static final int FROM_AN_ADDRESS = 50;
    private static final Duration REFILL = Duration.ofMinutes(15);
    private static final int REMEMBERED = 10_000;

    private final Map<String, Bucket> buckets = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** Takes one attempt, before the password is looked at; false when none is left. */
    boolean mayTry(String signInName, String address) {
        return forName(signInName).tryConsume(1) && fromAddress(address).tryConsume(1);
    }

    /** Gives the attempt back: it was no guess. */
    void succeeded(String signInName, String address) {
        forName(signInName).addTokens(1);
        fromAddress(address).addTokens(1);
    }

    /** Takes one attempt at a program's key; counted apart, so that a program shuts nobody out of the pages. */
    boolean mayTryKey(String address) {
        return forKeys(address).tryConsume(1);
    }

    void keySucceeded(String address) {
        forKeys(address).addTokens(1);
    }

    private Bucket forKeys(String address) {
        return bucket("keys from " + address, FROM_AN_ADDRESS);
    }

    private Bucket forName(String signInName) {
        return bucket("name " + Accounts.normalised(signInName), FOR_A_NAME);
    }

    private Bucket fromAddress(String address) {
        return bucket("address " + address, FROM_AN_ADDRESS);
    }

    private Bucket bucket(String key, int attempts) {
        synchronized (buckets) {
            return buckets.computeIfAbsent(
                    key,
                    unused -> Bucket.builder()
                            .addLimit(limit -> limit.capacity(attempts).refillGreedy(attempts, REFILL))
                            .build());
        }
    }
}
