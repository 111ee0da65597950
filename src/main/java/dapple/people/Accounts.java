package dapple.people;

import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who may be here: passwords at sign-in, and the state of an account at each request after it. */
@Service
class Accounts {
    private final PersonRepository people;
    private final Sites sites;
    private final PasswordEncoder passwords;
    private final Clock clock;
    private final String hashOfNobody;

    Accounts(PersonRepository people, Sites sites, PasswordEncoder passwords, Clock clock) {
        this.people = people;
        this.sites = sites;
        this.passwords = passwords;
        this.clock = clock;
        this.hashOfNobody = passwords.encode("nobody has this password");
    }

    /** The person with this password; an unknown name takes as long to refuse as a wrong password. */
    @Transactional(readOnly = true)
    public Optional<SignedIn> withPassword(String signInName, String password) {
        Optional<Person> person = people.findBySignInName(normalised(signInName));
        boolean right =
                passwords.matches(password, person.map(Person::passwordHash).orElse(hashOfNobody));
        return right ? person.flatMap(this::signedIn) : Optional.empty();
    }

    /** The person as they are now, empty when they may no longer be here. */
    @Transactional(readOnly = true)
    public Optional<SignedIn> asOfNow(long personId) {
        return people.findWithMemberships(personId).flatMap(this::signedIn);
    }

    /** The person as they are now at one site, empty when they may no longer be there. */
    @Transactional(readOnly = true)
    public Optional<SignedIn> asOfNow(long personId, long siteId) {
        return people.findWithMemberships(personId)
                .filter(person -> person.deactivatedAt().isEmpty())
                .flatMap(person -> at(sites.get(siteId), person));
    }

    private Optional<SignedIn> signedIn(Person person) {
        if (person.deactivatedAt().isPresent()) {
            return Optional.empty();
        }
        return person.memberships().stream()
                .map(Membership::siteId)
                .distinct()
                .sorted()
                .map(sites::get)
                .flatMap(site -> at(site, person).stream())
                .findFirst();
    }

    private Optional<SignedIn> at(SiteFacts site, Person person) {
        LocalDate today = LocalDate.now(clock.withZone(site.timeZone()));
        Set<Role> roles = person.membershipsAt(site.id()).stream()
                .filter(membership -> membership.holdsOn(today))
                .map(Membership::role)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Role.class)));
        return Optional.of(roles)
                .filter(held -> !held.isEmpty())
                .map(held -> new SignedIn(
                        person.id(),
                        person.signInName(),
                        person.name(),
                        site.id(),
                        site.name(),
                        site.timeZone(),
                        held));
    }

    /** Sign-in names are compared in lower case, without spaces around them. */
    static String normalised(String signInName) {
        return signInName.strip().toLowerCase(Locale.ROOT);
    }
}
