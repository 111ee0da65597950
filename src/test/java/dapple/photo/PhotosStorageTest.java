package dapple.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Visitor;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

@StorageTest
class PhotosStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Photos photos;

    @Autowired
    private JdbcTemplate database;

    private final UUID visit = UUID.randomUUID();
    private SiteFacts site;
    private SignedIn keeper;
    private long enclosure;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        enclosure = collection.emptyEnclosure(site);
    }

    @Test
    void aPhotoComesBackAsAPicture() {
        long photo = add(UUID.randomUUID());
        assertThat(photos.content(site.id(), photo, Scale.FULL))
                .hasValueSatisfying(
                        content -> assertThat(Camera.read(content).getWidth()).isEqualTo(64));
    }

    @Test
    void aPhotoIsNotFoundAtAnotherSite() {
        long photo = add(UUID.randomUUID());
        assertThat(photos.content(collection.site().id(), photo, Scale.FULL)).isEmpty();
    }

    @Test
    void noPhotoIsKeptOfAnotherSitesEnclosure() {
        enclosure = collection.emptyEnclosure(collection.site());
        assertThatThrownBy(() -> add(UUID.randomUUID())).isInstanceOf(NotFoundException.class);
    }

    @Test
    void noPhotoIsKeptWithSomebodyElsesVisit() {
        add(UUID.randomUUID());
        keeper = collection.person(site, Role.KEEPER);
        assertThatThrownBy(() -> add(UUID.randomUUID())).isInstanceOf(ConflictException.class);
    }

    @Test
    void aPhotoSentTwiceIsKeptOnce() {
        UUID key = UUID.randomUUID();
        assertThat(add(key)).isEqualTo(add(key));
    }

    @Test
    void aVisitHasAtMostSix() {
        addMany(6);
        assertThatThrownBy(() -> add(UUID.randomUUID()))
                .isInstanceOfSatisfying(
                        PhotoRefusedException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(PhotoFault.TOO_MANY_PHOTOS));
    }

    @Test
    void twoPhonesAtOnceLeaveAtMostSix() {
        addMany(5);
        Together.run(() -> add(UUID.randomUUID()), () -> add(UUID.randomUUID()));
        assertThat(photos.ofVisit(site.id(), visit)).hasSize(6);
    }

    @Test
    void twoPhonesThatBeginAVisitAtOnceKeepBoth() {
        List<Throwable> thrown = Together.run(() -> add(UUID.randomUUID()), () -> add(UUID.randomUUID()));
        assertThat(thrown).isEmpty();
        assertThat(photos.ofVisit(site.id(), visit)).hasSize(2);
    }

    @Test
    void whoTookItRemovesIt() {
        long photo = add(UUID.randomUUID());
        photos.remove(visitor(keeper), photo, "a visitor is on it");
        assertThat(pictures(photo)).isZero();
    }

    @Test
    void thatItWasRemovedStaysOnRecordWithItsReason() {
        long photo = add(UUID.randomUUID());
        photos.remove(visitor(keeper), photo, "a visitor is on it");
        assertThat(photos.ofVisit(site.id(), visit).get(0).removal())
                .map(PhotoFacts.Removal::reason)
                .contains("a visitor is on it");
    }

    @Test
    void anotherKeeperDoesNotRemoveIt() {
        long photo = add(UUID.randomUUID());
        Visitor other = visitor(collection.person(site, Role.KEEPER));
        assertThatThrownBy(() -> photos.remove(other, photo, "why")).isInstanceOf(ConflictException.class);
    }

    @Test
    void aSupervisorRemovesIt() {
        long photo = add(UUID.randomUUID());
        photos.remove(visitor(collection.person(site, Role.SUPERVISOR)), photo, "why");
        assertThat(pictures(photo)).isZero();
    }

    @Test
    void nobodyOfAnotherSiteRemovesIt() {
        long photo = add(UUID.randomUUID());
        Visitor stranger = visitor(collection.person(collection.site(), Role.SUPERVISOR));
        assertThatThrownBy(() -> photos.remove(stranger, photo, "why")).isInstanceOf(NotFoundException.class);
    }

    @Test
    void oneThatWasRemovedMakesRoomForAnother() {
        long first = addMany(6);
        photos.remove(visitor(keeper), first, "blurred");
        assertThat(add(UUID.randomUUID())).isGreaterThan(first);
    }

    private long addMany(int count) {
        long last = 0;
        for (int at = 0; at < count; at++) {
            last = add(UUID.randomUUID());
        }
        return last;
    }

    private long add(UUID key) {
        return photos.add(new NewPhoto(visitor(keeper), visit, enclosure, key), Camera.jpegWithExif(64, 48, 1));
    }

    private static Visitor visitor(SignedIn person) {
        return Visitor.of(person);
    }

    private int pictures(long photo) {
        Integer count =
                database.queryForObject("select count(*) from visit_picture where photo_id = ?", Integer.class, photo);
        return count == null ? 0 : count;
    }
}
