package dapple.people;

import dapple.site.ConflictException;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Begins an empty installation: one site, one administrator, against a code that only the log shows. */
@Service
public class FirstRun {
    private static final Logger LOG = LoggerFactory.getLogger(FirstRun.class);

    private final InstallationRepository installations;
    private final Sites sites;
    private final People people;
    private final Clock clock;
    private final OneTimeCode code = OneTimeCode.random();
    private final SignInAttempts attempts;
    private volatile boolean begun;
    private volatile boolean occupied;

    FirstRun(InstallationRepository installations, Sites sites, People people, SignInAttempts attempts, Clock clock) {
        this.installations = installations;
        this.sites = sites;
        this.people = people;
        this.attempts = attempts;
        this.clock = clock;
    }

    @EventListener(ApplicationReadyEvent.class)
    void printCode() {
        if (isPending()) {
            LOG.info("First run: open {} and enter the code {}", FirstRunController.PATH, code.text());
        }
    }

    public boolean isPending() {
        if (!begun && !occupied) {
            begun = installations.existsById(Installation.ONLY);
        }
        return !begun;
    }

    /** Whether it is the code; too many guesses from an address are not looked at. */
    public boolean isCode(String typed, String address) {
        return attempts.mayTry(FirstRunController.PATH, address) && code.matches(typed);
    }

    /**
     * Fills an empty installation otherwise than by beginning it anew. Until that is done or has failed, nobody begins it
     * and it counts as empty.
     *
     * @return what the filling gave; empty if the installation has been begun
     */
    public synchronized <T> Optional<T> whilePending(Supplier<T> filling) {
        if (!isPending()) {
            return Optional.empty();
        }
        occupied = true;
        try {
            return Optional.of(filling.get());
        } finally {
            occupied = false;
        }
    }

    /**
     * Makes the site and its first administrator.
     *
     * @throws ConflictException if somebody else was first
     */
    @Transactional
    public SiteFacts begin(String siteName, ZoneId timeZone, NewPerson administrator) {
        if (occupied) {
            throw new ConflictException("an archive is being taken in");
        }
        try {
            installations.saveAndFlush(new Installation(clock.instant()));
        } catch (DataIntegrityViolationException somebodyElse) {
            throw new ConflictException("this installation has been begun already");
        }
        SiteFacts site = sites.add(siteName, timeZone);
        people.add(site.id(), administrator, Set.of(Role.ADMINISTRATOR), Optional.empty());
        return site;
    }
}
