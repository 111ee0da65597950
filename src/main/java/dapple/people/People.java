package dapple.people;

import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The people of a site: added, given roles, deactivated, let in again after a forgotten password. */
@Service
public class People {
    /** How long a reset code holds. */
    static final Duration RESET_HOLDS = Duration.ofHours(24);

    private final PersonRepository people;
    private final PasswordEncoder passwords;
    private final Clock clock;

    People(PersonRepository people, PasswordEncoder passwords, Clock clock) {
        this.people = people;
        this.passwords = passwords;
        this.clock = clock;
    }

    /**
     * Adds a person with roles at a site.
     *
     * @return the person's id
     * @throws ConflictException if the sign-in name is taken
     */
    @Transactional
    public long add(long siteId, NewPerson added, Set<Role> roles, Optional<LocalDate> lastDay) {
        String signInName = Accounts.normalised(added.signInName());
        if (isTaken(signInName)) {
            throw new ConflictException("the sign-in name is taken");
        }
        Person person = new Person(signInName, added.name(), passwords.encode(added.password()), clock.instant());
        person.takeRoles(siteId, roles, lastDay);
        return people.save(person).id();
    }

    @Transactional(readOnly = true)
    public boolean isTaken(String signInName) {
        return people.findBySignInName(Accounts.normalised(signInName)).isPresent();
    }

    @Transactional(readOnly = true)
    public List<PersonFacts> at(long siteId) {
        return people.findAllAtSite(siteId).stream()
                .map(person -> facts(siteId, person))
                .sorted(Comparator.comparing(PersonFacts::isActive).reversed().thenComparing(PersonFacts::name))
                .toList();
    }

    @Transactional(readOnly = true)
    public PersonFacts get(long siteId, long personId) {
        return facts(siteId, find(siteId, personId));
    }

    /** Names of people of a site, by id. */
    @Transactional(readOnly = true)
    public Map<Long, String> names(long siteId) {
        return namesOf(at(siteId));
    }

    /** Names by id, in the order of the people who are at hand already. */
    public static Map<Long, String> namesOf(List<PersonFacts> people) {
        return people.stream()
                .collect(Collectors.toMap(PersonFacts::id, PersonFacts::name, (one, same) -> one, LinkedHashMap::new));
    }

    /**
     * Changes a person's name, roles and last day.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the person since
     */
    @Transactional
    public void change(long siteId, long personId, long version, PersonChange change) {
        Person person = people.findToChange(siteId, personId).orElseThrow(NotFoundException::new);
        requireNotErased(person);
        if (person.version() != version) {
            throw new ObjectOptimisticLockingFailureException(Person.class, personId);
        }
        person.rename(change.name());
        person.takeRoles(siteId, change.roles(), change.lastDay());
        people.saveAndFlush(person);
    }

    @Transactional
    public void deactivate(long siteId, long personId) {
        findOnlyHere(siteId, personId).deactivate(clock.instant());
    }

    @Transactional
    public void reactivate(long siteId, long personId) {
        Person person = findOnlyHere(siteId, personId);
        requireNotErased(person);
        person.reactivate();
    }

    /** A code, shown once, with which the person sets a new password. */
    @Transactional
    String allowReset(long siteId, long personId) {
        OneTimeCode code = OneTimeCode.random();
        Person person = findOnlyHere(siteId, personId);
        requireNotErased(person);
        person.allowReset(
                passwords.encode(OneTimeCode.normalised(code.text())),
                clock.instant().plus(RESET_HOLDS));
        return code.text();
    }

    /** Sets a new password against a reset code; false if the code is not right, not this person's or too old. */
    @Transactional
    boolean resetPassword(String signInName, String code, String newPassword) {
        Optional<Person> person = people.findBySignInName(Accounts.normalised(signInName))
                .filter(found -> found.resetCodeHash(clock.instant())
                        .filter(hash -> passwords.matches(OneTimeCode.normalised(code), hash))
                        .isPresent());
        person.ifPresent(found -> found.changePassword(passwords.encode(newPassword)));
        return person.isPresent();
    }

    /** Changes one's own password; false if the old one is not right. */
    @Transactional
    boolean changePassword(long personId, String oldPassword, String newPassword) {
        Person person = people.findById(personId).orElseThrow(NotFoundException::new);
        boolean right = passwords.matches(oldPassword, person.passwordHash());
        if (right) {
            person.changePassword(passwords.encode(newPassword));
        }
        return right;
    }

    private Person find(long siteId, long personId) {
        return people.findAtSite(siteId, personId).orElseThrow(NotFoundException::new);
    }

    /** One site's administrator has no say over an account that another site uses too. */
    private Person findOnlyHere(long siteId, long personId) {
        Person person = find(siteId, personId);
        if (person.memberships().stream().anyMatch(membership -> membership.siteId() != siteId)) {
            throw new ConflictException("the account is used at another site too");
        }
        return person;
    }

    private static void requireNotErased(Person person) {
        if (person.erasedAt().isPresent()) {
            throw new ConflictException("the person has been erased");
        }
    }

    private static PersonFacts facts(long siteId, Person person) {
        return new PersonFacts(
                person.id(),
                person.version(),
                person.signInName(),
                person.name(),
                person.rolesAt(siteId).stream().sorted().toList(),
                person.lastDayAt(siteId),
                person.deactivatedAt(),
                person.erasedAt());
    }
}
