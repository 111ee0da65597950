package dapple.demo;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.review.Deciding;
import dapple.review.DecisionKind;
import dapple.review.NewDecision;
import dapple.site.Settings;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** What the demo's supervisor has decided about findings: one stands for a while, another was given to the keeper. */
@Component
@Profile("demo")
class DemoDesk {
    private static final int ACCEPTED_DAYS = 21;
    private static final int GIVEN_DAYS = 5;

    private final Deciding deciding;

    DemoDesk(Deciding deciding) {
        this.deciding = deciding;
    }

    /** Accepts that an enclosure is borderline. */
    void accept(DemoTeam.Members members, long enclosureId, Instant now) {
        decide(
                members,
                enclosureId,
                DecisionKind.ACCEPTED,
                "The lamp is at its lowest; a new one comes with the next order",
                day(now, ACCEPTED_DAYS),
                Optional.empty());
    }

    /** Gives a weak lamp to the keeper. */
    void give(DemoTeam.Members members, long enclosureId, Instant now) {
        decide(
                members,
                enclosureId,
                DecisionKind.GIVEN,
                "Fit a new tube and read again after its first 100 hours",
                day(now, GIVEN_DAYS),
                Optional.of(members.keeper()));
    }

    private void decide(
            DemoTeam.Members members,
            long enclosureId,
            DecisionKind kind,
            String text,
            LocalDate until,
            Optional<Long> givenTo) {
        NewDecision decision = new NewDecision(UUID.randomUUID(), kind, text, Optional.of(until), givenTo);
        deciding.decide(supervisor(members), enclosureId, decision);
    }

    private static LocalDate day(Instant now, int days) {
        return LocalDate.ofInstant(now, DemoTeam.ZONE).plusDays(days);
    }

    private static SignedIn supervisor(DemoTeam.Members members) {
        ZoneId zone = DemoTeam.ZONE;
        return new SignedIn(
                members.supervisor(),
                "supervisor",
                "Odile Renner",
                members.siteId(),
                DemoTeam.SITE,
                zone,
                Settings.USUAL,
                Set.of(Role.SUPERVISOR));
    }
}
