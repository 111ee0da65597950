package dapple.demo;

import dapple.agreement.FindingFacts;
import dapple.agreement.MeterFindings;
import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Role;
import dapple.people.SignedIn;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Leads a person of the demo to what is worth seeing in their role. What somebody has taken away is left out. */
@Component
@Profile("demo")
class DemoTour {
    /** Whose tour somebody with several roles is led on, and that of roles which have none of their own. */
    private static final List<Role> FIRST = List.of(Role.SUPERVISOR, Role.VET, Role.KEEPER, Role.ADMINISTRATOR);

    private final List<DemoTourRow> rows = DemoTourRow.read();
    private final Enclosures enclosures;
    private final Animals animals;
    private final MeterFindings findings;

    DemoTour(Enclosures enclosures, Animals animals, MeterFindings findings) {
        this.enclosures = enclosures;
        this.animals = animals;
        this.findings = findings;
    }

    List<DemoStop> of(SignedIn person) {
        Role role = roleOf(person);
        return rows.stream()
                .filter(row -> row.role() == role)
                .flatMap(row -> id(person.siteId(), row).map(row::at).stream())
                .toList();
    }

    /** Who has none of the roles of a tour sees what an inspector sees, as far as they may. */
    private static Role roleOf(SignedIn person) {
        return FIRST.stream().filter(person.roles()::contains).findFirst().orElse(Role.INSPECTOR);
    }

    private Optional<Long> id(long siteId, DemoTourRow row) {
        return switch (row.thing()) {
            case NONE -> Optional.of(0L);
            case ENCLOSURE ->
                first(enclosures.inWalkingOrder(siteId).stream()
                        .filter(one -> one.code().equals(row.name()))
                        .map(EnclosureFacts::id));
            case ANIMAL ->
                first(animals.here(siteId).stream()
                        .filter(one -> one.name().equals(row.name()))
                        .map(AnimalFacts::id));
            case FINDING -> first(findings.open(siteId).stream().map(FindingFacts::id));
        };
    }

    private static Optional<Long> first(Stream<Long> ids) {
        return ids.findFirst();
    }
}
