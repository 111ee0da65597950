package dapple.people;

import java.time.Clock;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
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
    private final PasswordEncoder passwords;
    private final Clock clock;
    private final String hashOfNobody;

    Accounts(PersonRepository people, PasswordEncoder passwords, Clock clock) {
        this.people = people;
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
        return right ? person.flatMap(found -> asOfNow(found.id())) : Optional.empty();
    }

    /** The person as they are now, empty when they may no longer be here. */
    @Transactional(readOnly = true)
    public Optional<SignedIn> asOfNow(long personId) {
        return atFirst(heldNow(personId));
    }

    /** The person as they are now at one site, empty when they may no longer be there. */
    @Transactional(readOnly = true)
    public Optional<SignedIn> asOfNow(long personId, long siteId) {
        return atFirst(heldNow(personId).stream()
                .filter(held -> held.siteId() == siteId)
                .toList());
    }

    private List<Held> heldNow(long personId) {
        Instant now = clock.instant();
        return people.held(personId).stream().filter(held -> held.isAt(now)).toList();
    }

    /** At the first site in which they have a role. */
    private static Optional<SignedIn> atFirst(List<Held> all) {
        return all.stream().findFirst().map(first -> {
            Set<Role> roles = all.stream()
                    .filter(held -> held.siteId() == first.siteId())
                    .map(held -> held.membership().role())
                    .collect(Collectors.toCollection(() -> EnumSet.noneOf(Role.class)));
            return first.signedIn(roles);
        });
    }

    /** Sign-in names are compared in lower case, without spaces around them. */
    static String normalised(String signInName) {
        return signInName.strip().toLowerCase(Locale.ROOT);
    }
}
