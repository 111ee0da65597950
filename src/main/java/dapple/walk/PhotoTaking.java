package dapple.walk;

import dapple.people.SignedIn;
import dapple.photo.NewPhoto;
import dapple.photo.PhotoFile;
import dapple.photo.PhotoRefusedException;
import dapple.photo.Photos;
import dapple.reading.Visitor;
import dapple.site.Given;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;

/** Stores the photos that phones send, each once. */
@Service
class PhotoTaking {
    private final Admission admission;
    private final Photos photos;
    private final MessageSource messages;

    PhotoTaking(Admission admission, Photos photos, MessageSource messages) {
        this.admission = admission;
        this.photos = photos;
        this.messages = messages;
    }

    /**
     * Stores a photo, or finds it stored.
     *
     * @param typed where, by whom and when it was taken
     * @throws IllegalArgumentException if it does not say so
     */
    Answer take(SignedIn me, TypedEntry typed, PhotoFile file) {
        if (!typed.isPlaced()) {
            throw new IllegalArgumentException("a photo must name its place, person and times");
        }
        return admission.admit(me, typed, takenAt -> stored(me, typed, takenAt, file));
    }

    private Answer stored(SignedIn me, TypedEntry typed, Instant takenAt, PhotoFile file) {
        UUID key = Given.of(typed.key());
        try {
            photos.add(photo(me, typed, takenAt), file.bytes());
            return Answer.stored(key, "");
        } catch (PhotoRefusedException refused) {
            return Answer.refused(key, messages.getMessage("photos.fault." + refused.fault(), null, Locale.UK));
        }
    }

    private static NewPhoto photo(SignedIn me, TypedEntry typed, Instant takenAt) {
        return new NewPhoto(
                Visitor.of(me),
                Given.of(typed.visitKey()),
                Given.of(typed.enclosureId()),
                Given.of(typed.key()),
                Optional.of(takenAt));
    }
}
