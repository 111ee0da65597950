package dapple.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import dapple.species.SpeciesName;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class TargetsStorageTest {
    private static final UvZone ZONE_2 = new UvZone(2, LightMethod.SUNBEAM);
    private static final UvZone ZONE_3 = new UvZone(3, LightMethod.SUNBEAM);

    @Autowired
    private TestCollection collection;

    @Autowired
    private SpeciesKeeping speciesKeeping;

    @Autowired
    private Targets targets;

    @Autowired
    private ZoneLimits zoneLimits;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn approver;
    private SpeciesFacts species;

    @BeforeEach
    void furnish() {
        site = collection.site();
        approver = collection.person(site, Role.SUPERVISOR);
        species = collection.species(site, "Pogona vitticeps");
    }

    @Test
    void hasNoneBeforeTheFirstApproval() {
        assertThat(inForce(clock.instant())).isEmpty();
    }

    @Test
    void holdsFromItsApproval() {
        Target approved = approve(ZONE_3);
        assertThat(inForce(approved.approvedAt())).contains(approved);
    }

    @Test
    void isNeverBackdated() {
        Target approved = approve(ZONE_3);
        assertThat(inForce(approved.approvedAt().minusNanos(1000))).isEmpty();
    }

    @Test
    void aFirstVersionForEarlierReadingsHoldsFromTheStartOfTheRecord() {
        Target approved = targets.approve(site.id(), forEarlierReadings(ZONE_3));
        assertThat(inForce(Instant.parse("1998-03-01T12:00:00Z"))).contains(approved);
    }

    @Test
    void aFirstVersionForEarlierReadingsKeepsWhenItWasApproved() {
        Instant before = clock.instant();
        assertThat(targets.approve(site.id(), forEarlierReadings(ZONE_3)).approvedAt())
                .isBetween(before, clock.instant());
    }

    @Test
    void aFirstVersionForEarlierReadingsGivesWayToTheNextFromItsApprovalOn() {
        Target first = targets.approve(site.id(), forEarlierReadings(ZONE_2));
        Target next = approve(ZONE_3);
        assertThat(inForce(next.approvedAt().minusNanos(1000))).contains(first);
        assertThat(inForce(next.approvedAt())).contains(next);
    }

    @Test
    void aLaterVersionNeverCountsForEarlierReadings() {
        approve(ZONE_2);
        assertThatThrownBy(() -> targets.approve(site.id(), forEarlierReadings(ZONE_3)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anApprovalForEarlierReadingsSentTwiceMakesOneVersion() {
        assertThat(targets.approveAfter(site.id(), 0, forEarlierReadings(ZONE_2)))
                .isEqualTo(targets.approveAfter(site.id(), 0, forEarlierReadings(ZONE_2)));
    }

    @Test
    void theSameLimitsForOtherReadingsAreAnotherApproval() {
        targets.approveAfter(site.id(), 0, forEarlierReadings(ZONE_2));
        assertThatThrownBy(() -> approveAfter(0, ZONE_2)).isInstanceOf(ConflictException.class);
    }

    @Test
    void givesWayToTheNextVersion() {
        approve(ZONE_2);
        Target next = approve(ZONE_3);
        assertThat(inForce(next.approvedAt())).contains(next);
    }

    @Test
    void staysInForceForThePastWhenAVersionFollows() {
        Target first = approve(ZONE_2);
        Instant between = first.approvedAt();
        approve(ZONE_3);
        assertThat(inForce(between)).contains(first);
    }

    @Test
    void countsItsVersions() {
        approve(ZONE_2);
        assertThat(approve(ZONE_3).number()).isEqualTo(2);
    }

    @Test
    void keepsTheLimitsOfItsZone() {
        approve(ZONE_3);
        assertThat(inForce(clock.instant()).flatMap(target -> target.limits(Quantity.UV_INDEX)))
                .contains(new Limits(new Band(2.9, 7.4), 0.29, 8.0));
    }

    @Test
    void knowsNoSpeciesOfAnotherSite() {
        SiteFacts elsewhere = collection.site();
        Approval approval =
                new Approval(species.id(), ZONE_3, zoneLimits.of(ZONE_3), approver.personId(), "for a test");
        assertThatThrownBy(() -> targets.approve(elsewhere.id(), approval)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void numbersApprovalsAtOnceOneByOne() {
        assertThat(Together.run(() -> approve(ZONE_2), () -> approve(ZONE_3))).isEmpty();
        assertThat(targets.versions(site.id(), species.id()))
                .extracting(version -> version.target().number())
                .containsExactly(2, 1);
    }

    @Test
    void tellsTheSecondOfTwoWhoApproveAtOnce() {
        assertThat(Together.run(() -> approveAfter(0, ZONE_2), () -> approveAfter(0, ZONE_3)))
                .hasSize(1)
                .allMatch(ConflictException.class::isInstance);
        assertThat(targets.versions(site.id(), species.id())).hasSize(1);
    }

    @Test
    void makesOneVersionOfAnApprovalSentTwice() {
        assertThat(approveAfter(0, ZONE_2)).isEqualTo(approveAfter(0, ZONE_2));
    }

    @Test
    void refusesToFollowAVersionThatIsNoMore() {
        approve(ZONE_2);
        assertThatThrownBy(() -> approveAfter(0, ZONE_3)).isInstanceOf(ConflictException.class);
    }

    /** Of the newer of two versions, and of those of this site alone. */
    @Test
    void tellsTheHoursOfLightOfAMonth() {
        Photoperiod rising = new Photoperiod(
                List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0),
                SourceMark.COMMON_PRACTICE,
                "for a test");
        approve(ZONE_2);
        targets.approve(
                site.id(),
                new Approval(
                        species.id(), ZONE_3, zoneLimits.of(ZONE_3), Optional.of(rising), approver.personId(), "test"));
        assertThat(lightIn(site, "2030-11-20T12:00:00Z"))
                .containsExactly(Optional.of(new LightHours(11, SourceMark.COMMON_PRACTICE, "for a test")));
        assertThat(lightIn(collection.site(), "2030-11-20T12:00:00Z")).isEmpty();
    }

    @Test
    void aVersionWithoutPhotoperiodTellsNoHours() {
        approve(ZONE_2);
        assertThat(lightIn(site, "2030-11-20T12:00:00Z")).containsExactly(Optional.empty());
    }

    @Test
    void theTargetOfAMonthIsTheTargetInForce() {
        approve(ZONE_2);
        Instant at = Instant.parse("2030-11-20T12:00:00Z");
        assertThat(targets.inForceInMonth(site.id(), List.of(species.id()), at).values())
                .extracting(TargetInMonth::target)
                .containsExactlyElementsOf(
                        targets.inForce(site.id(), List.of(species.id()), at).values());
    }

    private List<Optional<LightHours>> lightIn(SiteFacts where, String at) {
        return targets.inForceInMonth(where.id(), List.of(species.id()), Instant.parse(at)).values().stream()
                .map(TargetInMonth::light)
                .toList();
    }

    @Test
    void keepsHoursOfLightByMonth() {
        Photoperiod year = new Photoperiod(
                List.of(9.0, 10.0, 11.5, 13.0, 14.25, 15.0, 14.5, 13.5, 12.0, 10.5, 9.5, 8.75),
                SourceMark.COMMON_PRACTICE,
                "for a test");
        targets.approve(
                site.id(),
                new Approval(
                        species.id(), ZONE_3, zoneLimits.of(ZONE_3), Optional.of(year), approver.personId(), "test"));
        assertThat(targets.newest(site.id(), species.id()).flatMap(VersionDetails::photoperiod))
                .contains(year);
    }

    @Test
    void hasNoPhotoperiodUnlessItIsGiven() {
        approve(ZONE_3);
        assertThat(targets.newest(site.id(), species.id()).flatMap(VersionDetails::photoperiod))
                .isEmpty();
    }

    @Test
    void followsASpeciesThatIsRenamed() {
        Target approved = approve(ZONE_3);
        speciesKeeping.rename(site.id(), species.id(), species.version(), new SpeciesName("Pogona nova", "dragon"));
        assertThat(inForce(clock.instant())).contains(approved);
    }

    private Approval forEarlierReadings(UvZone zone) {
        return new Approval(species.id(), zone, zoneLimits.of(zone), approver.personId(), "for a test")
                .forEarlierReadings(true);
    }

    private Target approveAfter(int seen, UvZone zone) {
        return targets.approveAfter(
                site.id(),
                seen,
                new Approval(species.id(), zone, zoneLimits.of(zone), approver.personId(), "for a test"));
    }

    private Target approve(UvZone zone) {
        return targets.approve(
                site.id(), new Approval(species.id(), zone, zoneLimits.of(zone), approver.personId(), "for a test"));
    }

    private Optional<Target> inForce(Instant at) {
        return Optional.ofNullable(
                targets.inForce(site.id(), List.of(species.id()), at).get(species.id()));
    }
}
