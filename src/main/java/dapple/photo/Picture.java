package dapple.photo;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

/** The picture of a photo in one size, as JPEG. */
@Entity
@Immutable
@Table(name = "visit_picture")
class Picture {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long photoId;

    @Enumerated(EnumType.STRING)
    private Scale scale;

    private byte[] content;

    @SuppressWarnings("NullAway.Init")
    protected Picture() {}

    Picture(Photo photo, Scale scale, byte[] content) {
        this.photoId = photo.id();
        this.scale = scale;
        this.content = content.clone();
    }
}
