package dapple.people;

import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** People who left: since when, and how what is theirs alone goes from their accounts. */
@Service
public class Leavers {
    private final PersonRepository people;
    private final ApiTokenRepository keys;
    private final SignedInElsewhere sessions;
    private final PasswordEncoder passwords;
    private final Sites sites;
    private final Clock clock;

    Leavers(
            PersonRepository people,
            ApiTokenRepository keys,
            SignedInElsewhere sessions,
            PasswordEncoder passwords,
            Sites sites,
            Clock clock) {
        this.people = people;
        this.keys = keys;
        this.sessions = sessions;
        this.passwords = passwords;
        this.sites = sites;
        this.clock = clock;
    }

    /** Those who left every site and still have their names. */
    @Transactional(readOnly = true)
    public List<Leaver> named() {
        List<Person> all = people.withMemberships();
        Map<Long, ZoneId> zones = zones();
        return all.stream()
                .map(person -> leaver(person, all, zones))
                .filter(leaver -> leaver.leftAt().isPresent() && !leaver.isErased())
                .toList();
    }

    /**
     * A person of one site alone.
     *
     * @throws ConflictException if the account is used at another site too
     */
    @Transactional(readOnly = true)
    public Leaver get(long siteId, long personId) {
        List<Person> all = people.withMemberships();
        Person person = all.stream()
                .filter(one ->
                        one.id() == personId && !one.membershipsAt(siteId).isEmpty())
                .findFirst()
                .orElseThrow(NotFoundException::new);
        if (person.memberships().stream().anyMatch(membership -> membership.siteId() != siteId)) {
            throw new ConflictException("the account is used at another site too");
        }
        return leaver(person, all, zones());
    }

    private Map<Long, ZoneId> zones() {
        return sites.all().stream().collect(Collectors.toMap(SiteFacts::id, SiteFacts::timeZone));
    }

    private Leaver leaver(Person person, List<Person> all, Map<Long, ZoneId> zones) {
        return new Leaver(
                person.id(),
                leftAt(person, zones),
                person.memberships().stream().map(Membership::siteId).collect(Collectors.toSet()),
                isLastAdministrator(person, all, zones),
                person.erasedAt().isPresent());
    }

    private Optional<Instant> leftAt(Person person, Map<Long, ZoneId> zones) {
        return person.deactivatedAt().or(() -> lastDayOver(person, zones));
    }

    private Optional<Instant> lastDayOver(Person person, Map<Long, ZoneId> zones) {
        List<Membership> roles = person.memberships();
        if (roles.isEmpty() || roles.stream().anyMatch(role -> role.endsOn().isEmpty())) {
            return Optional.empty();
        }
        return roles.stream()
                .map(role -> end(role, zones))
                .max(Comparator.naturalOrder())
                .filter(end -> !end.isAfter(clock.instant()));
    }

    private static Instant end(Membership role, Map<Long, ZoneId> zones) {
        LocalDate after = role.endsOn().orElseThrow().plusDays(1);
        return after.atStartOfDay(zones.getOrDefault(role.siteId(), ZoneId.of("UTC")))
                .toInstant();
    }

    private boolean isLastAdministrator(Person person, List<Person> all, Map<Long, ZoneId> zones) {
        return person.memberships().stream()
                .filter(role -> role.role() == Role.ADMINISTRATOR)
                .anyMatch(role -> all.stream()
                        .filter(other -> other.id() != person.id())
                        .noneMatch(other -> administers(other, role.siteId(), zones)));
    }

    private boolean administers(Person person, long siteId, Map<Long, ZoneId> zones) {
        return leftAt(person, zones).isEmpty() && person.rolesAt(siteId).contains(Role.ADMINISTRATOR);
    }

    /**
     * Takes what is theirs alone from the account of who left: names, password, keys, sessions. Within the transaction that
     * takes it from everywhere else.
     *
     * @throws ConflictException if they have not left, are the last administrator, or have been erased
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public Erased erase(long personId) {
        List<Person> all = people.withMemberships();
        Person person =
                all.stream().filter(one -> one.id() == personId).findFirst().orElseThrow(NotFoundException::new);
        if (!leaver(person, all, zones()).mayBeErased()) {
            throw new ConflictException("the person has not left, is the last administrator, or has been erased");
        }
        Role role = person.memberships().stream()
                .map(Membership::role)
                .min(Comparator.naturalOrder())
                .orElse(Role.KEEPER);
        Erased erased = new Erased(personId, person.name(), person.signInName(), ErasedName.of(role, personId));
        sessions.end(person.signInName());
        keys.deleteByPersonId(personId);
        person.erase(erased.instead(), passwords.encode(UUID.randomUUID().toString()), clock.instant());
        people.saveAndFlush(person);
        return erased;
    }
}
