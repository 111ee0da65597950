package dapple.prediction;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/**
 * What was worked out lately, by all that it follows from; what was asked for least lately is forgotten. Who asks for what
 * another thread works out waits for that.
 *
 * @param <K> never changing, with equality by content
 */
public final class Lately<K, V> {
    private final Map<K, CompletableFuture<V>> kept;

    /**
     * Nothing yet.
     *
     * @param most how many are kept, above 0
     */
    public Lately(int most) {
        this.kept = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, CompletableFuture<V>> eldest) {
                return size() > most;
            }
        };
    }

    /** What follows from the key: as it was found before, or found now. What fails is tried anew the next time. */
    public V get(K key, Supplier<V> work) {
        CompletableFuture<V> mine = new CompletableFuture<>();
        CompletableFuture<V> found = foundOr(key, mine);
        if (found == mine) {
            try {
                mine.complete(work.get());
            } finally {
                giveUp(key, mine);
            }
        }
        return found.join();
    }

    private CompletableFuture<V> foundOr(K key, CompletableFuture<V> mine) {
        synchronized (kept) {
            return kept.computeIfAbsent(key, unused -> mine);
        }
    }

    private void giveUp(K key, CompletableFuture<V> mine) {
        if (!mine.isDone()) {
            synchronized (kept) {
                kept.remove(key, mine);
            }
            mine.completeExceptionally(new IllegalStateException("what was waited for could not be worked out"));
        }
    }
}
