package dapple.round;

import dapple.people.Role;
import dapple.people.SignedIn;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Who walks a round: one person, or whoever has a role. */
public sealed interface GivenTo {
    /** Whether it is meant for who asks. */
    boolean isFor(SignedIn me);

    /** As a form names it. */
    String key();

    /** One person. */
    record Person(long personId) implements GivenTo {
        @Override
        public boolean isFor(SignedIn me) {
            return me.personId() == personId;
        }

        @Override
        public String key() {
            return Long.toString(personId);
        }
    }

    /** Whoever has a role. */
    record Holders(Role role) implements GivenTo {
        @Override
        public boolean isFor(SignedIn me) {
            return me.roles().contains(role);
        }

        @Override
        public String key() {
            return role.name();
        }
    }

    /** Of two columns, of which one at most is filled. */
    static Optional<GivenTo> of(@Nullable Long personId, @Nullable Role role) {
        Optional<GivenTo> person = Optional.ofNullable(personId).map(Person::new);
        return person.or(() -> Optional.ofNullable(role).map(Holders::new));
    }

    default Optional<Long> ofPerson() {
        return this instanceof Person one ? Optional.of(one.personId()) : Optional.empty();
    }

    default Optional<Role> ofRole() {
        return this instanceof Holders holders ? Optional.of(holders.role()) : Optional.empty();
    }
}
