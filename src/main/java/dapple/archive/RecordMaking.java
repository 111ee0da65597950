package dapple.archive;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** A year's record while it is written, as its sheets see it. */
public final class RecordMaking {
    private final RecordSpan span;
    private final String madeBy;
    private final Instant madeAt;
    private final Supplier<Map<String, String>> sums;
    private final Map<Class<?>, Object> kept = new HashMap<>();

    RecordMaking(RecordSpan span, String madeBy, Instant madeAt, Supplier<Map<String, String>> sums) {
        this.span = span;
        this.madeBy = madeBy;
        this.madeAt = madeAt;
        this.sums = sums;
    }

    public RecordSpan span() {
        return span;
    }

    public long siteId() {
        return span.site().id();
    }

    public Instant from() {
        return span.from();
    }

    /** The end of the span, or now where it is not over. */
    public Instant until() {
        return span.to().isAfter(madeAt) ? madeAt : span.to();
    }

    public LocalDate firstDay() {
        return LocalDate.ofInstant(from(), span.site().timeZone());
    }

    public LocalDate lastDay() {
        return LocalDate.ofInstant(until().minusNanos(1), span.site().timeZone());
    }

    /** The name of who asked for it. */
    public String madeBy() {
        return madeBy;
    }

    public Instant madeAt() {
        return madeAt;
    }

    /** The SHA-256 of each entry that has been written so far, by name. */
    public Map<String, String> sums() {
        return sums.get();
    }

    /** Keeps what one sheet has found for those after it. */
    public <T> void keep(Class<T> kind, T found) {
        kept.put(kind, found);
    }

    /** What a sheet before this one has found; found now, if none has. */
    public <T> T found(Class<T> kind, Supplier<T> finding) {
        return Optional.ofNullable(kept.get(kind)).map(kind::cast).orElseGet(() -> {
            T found = finding.get();
            keep(kind, found);
            return found;
        });
    }
}
