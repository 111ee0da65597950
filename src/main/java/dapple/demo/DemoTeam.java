package dapple.demo;

import dapple.people.FirstRun;
import dapple.people.KeyOwner;
import dapple.people.Keys;
import dapple.people.NewPerson;
import dapple.people.People;
import dapple.people.Role;
import dapple.site.SiteFacts;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's invented people; all have the same password, which the sign-in page of this
 * profile shows, and the keeper's program has the key {@code demo}. */
@Component
@Profile("demo")
class DemoTeam {
    static final String SITE = "Larkmoor Reptile Rescue";
    static final ZoneId ZONE = ZoneId.of("Europe/London");

    /** Who reads with another meter for a while. */
    static final String SECOND_KEEPER = "Bram Aldous";

    private static final String KEY = "demo";

    /** From the beginning of the story, which is two years ago. */
    private static final int INSPECTED_DAYS = 730 + 90;

    private final FirstRun firstRun;
    private final People people;
    private final Keys keys;
    private final Clock clock;

    DemoTeam(FirstRun firstRun, People people, Keys keys, Clock clock) {
        this.firstRun = firstRun;
        this.people = people;
        this.keys = keys;
        this.clock = clock;
    }

    boolean isMissing() {
        return firstRun.isPending();
    }

    Members join() {
        SiteFacts site = firstRun.begin(SITE, ZONE, new NewPerson("admin", "Marek Soltys", DemoPasswords.KNOWN));
        long keeper = add(site, "keeper", "Tamsin Vale", Role.KEEPER);
        add(site, "keeper2", SECOND_KEEPER, Role.KEEPER);
        long supervisor = add(site, "supervisor", "Odile Renner", Role.SUPERVISOR);
        long vet = add(site, "vet", "Ilse Quist", Role.VET);
        inspector(site);
        keys.keep(new KeyOwner(site.id(), keeper), "Demo", KEY);
        return new Members(site.id(), keeper, supervisor, vet);
    }

    /** Inspectors stay for a while only. */
    private void inspector(SiteFacts site) {
        LocalDate lastDay = LocalDate.ofInstant(clock.instant(), ZONE).plusDays(INSPECTED_DAYS);
        NewPerson added = new NewPerson("inspector", "Rowan Teale", DemoPasswords.KNOWN);
        people.add(site.id(), added, Set.of(Role.INSPECTOR), Optional.of(lastDay));
    }

    private long add(SiteFacts site, String signInName, String name, Role role) {
        return people.add(
                site.id(), new NewPerson(signInName, name, DemoPasswords.KNOWN), Set.of(role), Optional.empty());
    }

    /** Those who act in the demo's story, by id. */
    record Members(long siteId, long keeper, long supervisor, long vet) {}
}
