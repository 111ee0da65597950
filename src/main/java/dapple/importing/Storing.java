package dapple.importing;

import dapple.animal.AnimalKeeping;
import dapple.animal.AnimalState;
import dapple.animal.Arrival;
import dapple.animal.BornAbout;
import dapple.animal.Happened;
import dapple.animal.Moving;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.animal.Sex;
import dapple.enclosure.EnclosureChange;
import dapple.enclosure.Enclosures;
import dapple.enclosure.Facing;
import dapple.enclosure.InnerSize;
import dapple.enclosure.NewPoint;
import dapple.enclosure.Position;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Subject;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.people.NewPerson;
import dapple.people.People;
import dapple.people.Role;
import dapple.species.SpeciesKeeping;
import dapple.species.SpeciesName;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Stores the new things of the sheets through the services that keep them, in an order in which each finds what it needs. */
@Component
class Storing {
    private final Enclosures enclosures;
    private final SpeciesKeeping species;
    private final StoringStock stock;
    private final People people;
    private final AnimalKeeping animals;
    private final Moving moving;
    private final StoringRigs rigs;
    private final MessageSource messages;
    private final Clock clock;

    Storing(
            Enclosures enclosures,
            SpeciesKeeping species,
            StoringStock stock,
            People people,
            AnimalKeeping animals,
            Moving moving,
            StoringRigs rigs,
            MessageSource messages,
            Clock clock) {
        this.enclosures = enclosures;
        this.species = species;
        this.stock = stock;
        this.people = people;
        this.animals = animals;
        this.moving = moving;
        this.rigs = rigs;
        this.messages = messages;
        this.clock = clock;
    }

    void store(Checking checking) {
        Book book = checking.book();
        long site = checking.me().siteId();
        int room = checking.known().rooms().size();
        for (Entry one : book.fresh(Subject.ROOM)) {
            one.isStoredAs(enclosures.addRoom(site, one.name(), ++room));
        }
        int walk = checking.known().enclosures().size();
        for (Entry one : book.fresh(Subject.ENCLOSURE)) {
            one.isStoredAs(enclosures.add(site, enclosure(book, one, ++walk)));
        }
        book.fresh(Subject.SPECIES)
                .forEach(one -> one.isStoredAs(species.add(
                                site,
                                new SpeciesName(
                                        one.name(),
                                        one.text(Field.SPECIES_COMMON).orElse(one.name())))
                        .id()));
        stock.store(site, book);
        book.fresh(Subject.PERSON).forEach(one -> one.isStoredAs(person(site, one)));
        book.fresh(Subject.POINT).stream()
                .sorted(Comparator.comparing((Entry one) -> role(one)))
                .forEach(one -> one.isStoredAs(point(site, book, one)));
        book.fresh(Subject.ANIMAL).forEach(one -> animal(checking, one));
        rigs.store(checking);
    }

    static long idOf(Book book, Entry entry, Field field, Subject subject) {
        return find(book, entry, field, subject).orElseThrow();
    }

    private static OptionalLong find(Book book, Entry entry, Field field, Subject subject) {
        Optional<Entry> found = entry.text(field).map(Keys::of).flatMap(key -> book.find(subject, key));
        return found.isPresent() ? found.get().id() : OptionalLong.empty();
    }

    private static EnclosureChange enclosure(Book book, Entry entry, int walkingOrder) {
        Optional<InnerSize> size = entry.number(Field.ENCLOSURE_WIDTH)
                .map(width -> new InnerSize(
                        width,
                        entry.number(Field.ENCLOSURE_DEPTH).orElseThrow(),
                        entry.number(Field.ENCLOSURE_HEIGHT).orElseThrow()));
        return new EnclosureChange(idOf(book, entry, Field.ROOM_NAME, Subject.ROOM), entry.name(), walkingOrder, size);
    }

    /** Nobody knows the password: an administrator gives a code to set one, as for one that was forgotten. */
    private long person(long site, Entry entry) {
        Set<Role> roles =
                entry.all(Field.PERSON_ROLE).stream().map(Role.class::cast).collect(Collectors.toSet());
        NewPerson person = new NewPerson(
                entry.name(),
                entry.text(Field.PERSON_NAME).orElseThrow(),
                UUID.randomUUID() + "-" + UUID.randomUUID().toString().substring(0, 30));
        return people.add(site, person, roles, Optional.empty());
    }

    private static PointRole role(Entry point) {
        return point.fact(Field.POINT_ROLE, PointRole.class).orElseThrow();
    }

    private long point(long site, Book book, Entry entry) {
        List<Quantity> read = entry.all(Field.READ_QUANTITY).stream()
                .map(Quantity.class::cast)
                .sorted()
                .toList();
        Optional<Position> position = entry.number(Field.POINT_X)
                .map(x -> new Position(
                        x,
                        entry.number(Field.POINT_Y).orElseThrow(),
                        entry.number(Field.POINT_Z).orElseThrow()));
        boolean isNamedByRole = entry.name().equals(role(entry).name());
        NewPoint point = new NewPoint(
                entry.text(Field.POINT_CODE).orElseThrow(),
                isNamedByRole ? say("import.place." + role(entry)) : entry.name(),
                role(entry),
                Facing.STRONGEST,
                position,
                read.isEmpty() ? List.of(Quantity.UV_INDEX) : read);
        return enclosures
                .addPoint(site, idOf(book, entry, Field.ENCLOSURE_CODE, Subject.ENCLOSURE), point)
                .id();
    }

    private void animal(Checking checking, Entry entry) {
        long site = checking.me().siteId();
        long person = checking.me().personId();
        Instant since = entry.fact(Field.ANIMAL_SINCE, Instant.class).orElseGet(clock::instant);
        AnimalState state = state(checking.book(), entry);
        Optional<Double> count = entry.number(Field.ANIMAL_COUNT).filter(number -> number > 1);
        long id = count.isPresent()
                ? animals.addGroup(
                        site, state, count.get().intValue(), new Happened(since, "", UUID.randomUUID(), person))
                : animals.add(site, state, person);
        entry.isStoredAs(id);
        find(checking.book(), entry, Field.ENCLOSURE_CODE, Subject.ENCLOSURE)
                .ifPresent(enclosure -> moving.move(site, new Arrival(id, enclosure, since, person)));
    }

    private static AnimalState state(Book book, Entry entry) {
        return new AnimalState(
                entry.text(Field.ACCESSION_NUMBER).orElseThrow(),
                entry.name(),
                idOf(book, entry, Field.SPECIES_NAME, Subject.SPECIES),
                entry.fact(Field.ANIMAL_SEX, Sex.class).orElse(Sex.UNKNOWN),
                entry.fact(Field.ANIMAL_BORN, BornAbout.class),
                Pigment.NORMAL,
                Reach.EVERYWHERE,
                "");
    }

    private String say(String key) {
        return messages.getMessage(key, new Object[0], Locale.UK);
    }
}
