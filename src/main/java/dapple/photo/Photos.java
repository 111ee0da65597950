package dapple.photo;

import dapple.photo.Photo.Times;
import dapple.photo.PhotoFacts.Removal;
import dapple.reading.Patiently;
import dapple.reading.VisitFacts;
import dapple.reading.Visitor;
import dapple.reading.Visits;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps photos of visits. */
@Service
public class Photos {
    static final int MOST_OF_A_VISIT = 6;

    /** With those that were removed. */
    private static final Limit SHOWN = Limit.of(50);

    private final PhotoRepository photos;
    private final PictureRepository pictures;
    private final PicturePreparing preparing;
    private final Visits visits;
    private final Patiently patiently;
    private final Clock clock;

    Photos(
            PhotoRepository photos,
            PictureRepository pictures,
            PicturePreparing preparing,
            Visits visits,
            Patiently patiently,
            Clock clock) {
        this.photos = photos;
        this.pictures = pictures;
        this.preparing = preparing;
        this.visits = visits;
        this.patiently = patiently;
        this.clock = clock;
    }

    /**
     * Keeps a photo; the first entry of a visit begins it.
     *
     * @param file a picture as it comes from a camera
     * @return its id
     * @throws PhotoRefusedException if it is none, too large, or one too many
     * @throws ConflictException if the visit, or the photo of this key, is another one
     */
    public long add(NewPhoto added, byte[] file) {
        Prepared prepared = preparing.prepare(file);
        return patiently.run(() -> {
            Instant now = clock.instant();
            Instant takenAt = added.takenAt().orElse(now);
            VisitFacts visit = visits.open(added.visitor(), added.visitKey(), added.enclosureId(), takenAt);
            return photos.findByEntryKey(added.key())
                    .map(kept -> kept(kept.facts(), visit))
                    .orElseGet(() -> store(new Photo(added, visit, prepared, new Times(takenAt, now)), prepared));
        });
    }

    private static long kept(PhotoFacts photo, VisitFacts visit) {
        if (photo.visitId() != visit.id()) {
            throw new ConflictException("the key belongs to a photo of another visit");
        }
        return photo.id();
    }

    private long store(Photo taken, Prepared prepared) {
        if (photos.countOf(taken.facts().visitId()) >= MOST_OF_A_VISIT) {
            throw new PhotoRefusedException(PhotoFault.TOO_MANY_PHOTOS);
        }
        Photo photo = photos.saveAndFlush(taken);
        for (Scale scale : Scale.values()) {
            pictures.saveAndFlush(new Picture(photo, scale, prepared.in(scale)));
        }
        return photo.id();
    }

    /** The photos of a visit, oldest first, those that were removed among them. */
    @Transactional(readOnly = true)
    public List<PhotoFacts> ofVisit(long siteId, UUID visitKey) {
        return visits.find(siteId, visitKey).stream()
                .flatMap(visit -> photos.ofVisit(siteId, visit.id(), SHOWN).stream())
                .map(Photo::facts)
                .toList();
    }

    /** The newest photos of an enclosure. */
    @Transactional(readOnly = true)
    public List<PhotoFacts> newest(long siteId, long enclosureId) {
        return photos.newest(siteId, enclosureId, Limit.of(MOST_OF_A_VISIT)).stream()
                .map(Photo::facts)
                .toList();
    }

    @Transactional(readOnly = true)
    public PhotoFacts get(long siteId, long photoId) {
        return photos.findAtSite(siteId, photoId).map(Photo::facts).orElseThrow(NotFoundException::new);
    }

    /** The JPEG of a photo; none: it was removed, or the site has no such photo. */
    @Transactional(readOnly = true)
    Optional<byte[]> content(long siteId, long photoId, Scale scale) {
        return pictures.content(siteId, photoId, scale);
    }

    /**
     * Deletes the pictures of a photo; that there was one, and why it went, stays on record. Removed twice, the first counts.
     *
     * @throws ConflictException if somebody else took it and the visitor does not supervise
     */
    @Transactional
    public void remove(Visitor visitor, long photoId, String reason) {
        Photo photo = photos.lockAtSite(visitor.siteId(), photoId).orElseThrow(NotFoundException::new);
        if (!photo.facts().mayBeRemovedBy(visitor)) {
            throw new ConflictException("somebody else took the photo");
        }
        if (photo.facts().isThere()) {
            photo.remove(new Removal(clock.instant(), visitor.personId(), reason));
            pictures.deleteOf(photoId);
        }
    }
}
