package dapple.demo;

import dapple.demo.DemoRows.Kind;
import dapple.evidence.EvidenceFacts;
import dapple.evidence.EvidenceKeeping;
import dapple.evidence.NewChoice;
import dapple.evidence.NewEvidence;
import dapple.light.sun.HomeDays;
import dapple.site.SourceMark;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import dapple.species.SpeciesName;
import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.Photoperiod;
import dapple.target.Targets;
import dapple.target.ZoneLimits;
import java.time.Instant;
import java.time.Year;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Enters the demo's species, each with the evidence for its zone and its target. */
@Component
@Profile("demo")
class DemoSpecies {
    private static final double TENTHS = 10;
    private static final String REASON = "Zone confirmed for our animals";

    private static final Year SOME_YEAR = Year.of(2026);
    private static final int RENAMED_DAYS_AGO = 250;

    private final SpeciesKeeping species;
    private final EvidenceKeeping evidence;
    private final Targets targets;
    private final ZoneLimits zoneLimits;

    DemoSpecies(SpeciesKeeping species, EvidenceKeeping evidence, Targets targets, ZoneLimits zoneLimits) {
        this.species = species;
        this.evidence = evidence;
        this.targets = targets;
        this.zoneLimits = zoneLimits;
    }

    SpeciesFacts enter(DemoTeam.Members members, Kind kind) {
        SpeciesFacts entered =
                species.add(members.siteId(), named(kind.formerName().orElse(kind.scientificName()), kind));
        kind.zone().ifPresent(zone -> confirm(members, entered, zone, kind));
        return entered;
    }

    /** Gives species that were entered by a former name the one that they have now. */
    void rename(DemoStory story, Consumer<Instant> time) {
        time.accept(story.daysAgo(RENAMED_DAYS_AGO));
        long site = story.members().siteId();
        story.rows().species().stream()
                .filter(kind -> kind.formerName().isPresent())
                .forEach(kind -> {
                    SpeciesFacts held = species.get(site, story.speciesId(kind.scientificName()));
                    species.rename(site, held.id(), held.version(), named(kind.scientificName(), kind));
                });
    }

    private static SpeciesName named(String scientificName, Kind kind) {
        return new SpeciesName(scientificName, kind.commonName());
    }

    private void confirm(DemoTeam.Members members, SpeciesFacts entered, UvZone zone, Kind kind) {
        EvidenceFacts row = evidence.add(
                members.siteId(),
                new NewEvidence(
                        entered.id(),
                        zone,
                        SourceMark.FROM_MEMORY,
                        "The supervisor’s notes on our animals",
                        members.supervisor()));
        evidence.choose(members.siteId(), new NewChoice(entered.id(), 0, row.id(), REASON, members.supervisor()));
        targets.approve(
                members.siteId(),
                new Approval(
                        entered.id(),
                        zone,
                        zoneLimits.of(zone),
                        kind.homeLatitudeDegrees().map(DemoSpecies::photoperiod),
                        members.supervisor(),
                        REASON));
    }

    /** Of the opposite latitude, so that winter falls into winter. */
    private static Photoperiod photoperiod(double latitudeDegrees) {
        return new Photoperiod(
                new HomeDays(-latitudeDegrees)
                        .hoursByMonth(SOME_YEAR).stream()
                                .map(hours -> Math.round(TENTHS * hours) / TENTHS)
                                .toList(),
                SourceMark.COMPUTED,
                "Day length at latitude 28.0° S, half a year shifted");
    }
}
