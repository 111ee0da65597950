package dapple.round;

import dapple.people.Action;
import dapple.people.PersonFacts;
import dapple.people.Role;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * To whom a round can be given: the roles that log readings, and the people of a site who have one of them.
 *
 * @param people those who are there today, by name
 */
record Recipients(List<PersonFacts> people) {
    static Recipients of(List<PersonFacts> all, LocalDate today) {
        return new Recipients(all.stream()
                .filter(PersonFacts::isActive)
                .filter(person -> person.lastDay().filter(today::isAfter).isEmpty())
                .filter(person -> person.roles().stream().anyMatch(Action.LOG_READINGS::isAllowedTo))
                .toList());
    }

    public List<Role> roles() {
        return Arrays.stream(Role.values())
                .filter(Action.LOG_READINGS::isAllowedTo)
                .toList();
    }

    /** Who is meant by what a form names. */
    Optional<GivenTo> named(String key) {
        Stream<GivenTo> holders = roles().stream().map(GivenTo.Holders::new);
        Stream<GivenTo> each = people.stream().map(person -> new GivenTo.Person(person.id()));
        Predicate<GivenTo> isMeant = one -> one.key().equals(key);
        return Stream.concat(holders, each).filter(isMeant).findFirst();
    }
}
