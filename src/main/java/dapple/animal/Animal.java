package dapple.animal;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** One animal or one group kept as a count, by its accession number, which is never used again. */
@Entity
@Audited
class Animal {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long speciesId;
    private String accessionNumber;
    private String name;

    @Enumerated(EnumType.STRING)
    private AnimalKind kind;

    @Enumerated(EnumType.STRING)
    private Sex sex;

    private @Nullable String bornAbout;

    @Enumerated(EnumType.STRING)
    private Pigment pigment;

    private @Nullable Double groundReachMetres;
    private String note;
    private @Nullable Instant startsAt;
    private @Nullable Long splitFromId;
    private @Nullable Instant endedAt;

    @Enumerated(EnumType.STRING)
    private @Nullable Happening endKind;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Animal() {}

    @SuppressWarnings("NullAway.Init")
    private Animal(long siteId, AnimalKind kind, AnimalState state) {
        this.siteId = siteId;
        this.kind = kind;
        become(state);
    }

    static Animal individual(long siteId, AnimalState state) {
        return new Animal(siteId, AnimalKind.INDIVIDUAL, state);
    }

    /** A group, whose count begins at an instant. */
    static Animal group(long siteId, AnimalState state, Instant startsAt) {
        Animal group = new Animal(siteId, AnimalKind.GROUP, state);
        group.startsAt = startsAt;
        return group;
    }

    /** What leaves a group at an instant. */
    static Animal splitOff(Animal group, AnimalKind kind, AnimalState state, Instant at) {
        Animal leaving = new Animal(group.siteId, kind, state);
        leaving.startsAt = at;
        leaving.splitFromId = group.id;
        return leaving;
    }

    final void become(AnimalState state) {
        this.accessionNumber = state.accessionNumber();
        this.name = state.name();
        this.speciesId = state.speciesId();
        this.sex = state.sex();
        this.bornAbout = state.born().map(BornAbout::text).orElse(null);
        this.pigment = state.pigment();
        this.groundReachMetres = state.reach().groundMetres().orElse(null);
        this.note = state.note();
    }

    void end(Happening how, Instant at) {
        this.endKind = how;
        this.endedAt = at;
    }

    void comeBack() {
        this.endKind = null;
        this.endedAt = null;
    }

    long id() {
        return id;
    }

    long siteId() {
        return siteId;
    }

    long version() {
        return version;
    }

    Optional<Instant> startsAt() {
        return Optional.ofNullable(startsAt);
    }

    Optional<Long> splitFromId() {
        return Optional.ofNullable(splitFromId);
    }

    Optional<RecordEnd> end() {
        return endKind == null || endedAt == null ? Optional.empty() : Optional.of(new RecordEnd(endKind, endedAt));
    }

    /** One animal is one since ever, unless its record says since when. */
    int countBeforeEvents() {
        return kind == AnimalKind.INDIVIDUAL && startsAt == null ? 1 : 0;
    }

    Reach reach() {
        return Reach.of(groundReachMetres);
    }

    AnimalFacts facts() {
        return new AnimalFacts(id, accessionNumber, name, speciesId, kind, pigment);
    }

    AnimalState state() {
        return new AnimalState(
                accessionNumber,
                name,
                speciesId,
                sex,
                Optional.ofNullable(bornAbout).flatMap(BornAbout::read),
                pigment,
                Reach.of(groundReachMetres),
                note);
    }

    AnimalDetails details(List<BodyLengthFacts> lengths) {
        return new AnimalDetails(facts(), version, state(), lengths, startsAt(), splitFromId(), end());
    }
}
