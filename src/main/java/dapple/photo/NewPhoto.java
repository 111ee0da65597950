package dapple.photo;

import dapple.reading.Visitor;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A photo to keep with a visit.
 *
 * @param key made with the form, or on the phone, so that one that is sent twice is stored once
 * @param takenAt empty: now
 */
public record NewPhoto(Visitor visitor, UUID visitKey, long enclosureId, UUID key, Optional<Instant> takenAt) {
    public NewPhoto(Visitor visitor, UUID visitKey, long enclosureId, UUID key) {
        this(visitor, visitKey, enclosureId, key, Optional.empty());
    }
}
