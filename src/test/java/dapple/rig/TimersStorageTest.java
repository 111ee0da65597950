package dapple.rig;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.Enclosures;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class TimersStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private BurnHours burnHours;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private long enclosureId;
    private LampFacts lamp;
    private Instant now;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        long roomId = enclosures.addRoom(site.id(), "Dry room", 1);
        enclosureId = enclosures.add(site.id(), roomId, "E1", 1, Optional.empty());
        lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        now = clock.instant();
    }

    static List<LampTimer> timers() {
        List<Optional<DailyTimer>> months =
                new ArrayList<>(Collections.nCopies(12, Optional.of(RigExamples.tenHours())));
        months.set(11, Optional.empty());
        return List.of(
                RigExamples.tenHours(),
                new MonthlyTimer(months),
                new HomeDayTimer(-23.5, true, LocalTime.of(13, 15), -20, 600, 840));
    }

    @ParameterizedTest
    @MethodSource("timers")
    void aTimerIsReadAsItWasStored(LampTimer timer) {
        fit(timer, Gear.UNKNOWN);
        assertThat(hanging().timer()).contains(timer);
        assertThat(rigs.lamps(site.id(), List.of(enclosureId), daysAgo(3), now))
                .extracting(FittedLamp::timer)
                .containsExactly(Optional.of(timer));
    }

    static List<Gear> gears() {
        return List.of(
                Gear.UNKNOWN,
                Gear.on(Ballast.MISSING),
                Gear.dimmedTo(0.7).on(Optional.of(Ballast.NOT_NEEDED)),
                Gear.by(LampControl.DIMMED),
                Gear.by(LampControl.THERMOSTAT));
    }

    @ParameterizedTest
    @MethodSource("gears")
    void gearIsReadAsItWasStored(Gear gear) {
        fit(RigExamples.tenHours(), gear);
        assertThat(hanging().gear()).isEqualTo(gear);
    }

    @Test
    void otherGearLeavesTheLampWhereItIs() {
        fit(RigExamples.tenHours(), Gear.UNKNOWN);
        make(1, new LampStep.SetGear(fittingId(), Gear.on(Ballast.THERE)));
        assertThat(hanging()).isEqualTo(RigExamples.hanging("tube").with(Gear.on(Ballast.THERE)));
        assertThat(rigs.lastLightChange(site.id(), enclosureId).orElseThrow().kind())
                .isEqualTo(RigChangeKind.GEAR_CHANGED);
    }

    @Test
    void aSwappedLampBurnsOnTheGearThatIsThere() {
        fit(RigExamples.tenHours(), Gear.on(Ballast.THERE));
        make(1, new LampStep.Swap(fittingId(), fresh()));
        assertThat(hanging().gear()).isEqualTo(Gear.on(Ballast.THERE));
    }

    @Test
    void aSwapMayComeWithOtherGear() {
        fit(RigExamples.tenHours(), Gear.on(Ballast.THERE));
        make(1, new LampStep.Swap(fittingId(), fresh(), Optional.of(Gear.on(Ballast.BUILT_IN))));
        assertThat(hanging().gear()).isEqualTo(Gear.on(Ballast.BUILT_IN));
    }

    /** Off in every month: two days of nothing. */
    @Test
    void aLampThatIsOffForTheSeasonDoesNotAge() {
        fit(new MonthlyTimer(Collections.nCopies(12, Optional.empty())), Gear.UNKNOWN);
        assertThat(burnHours.at(site.id(), lamp.id(), now)).isEqualTo(lamp.burnHoursAtEntry());
    }

    private void fit(LampTimer timer, Gear gear) {
        Hanging hanging = RigExamples.hanging("tube");
        make(
                2,
                new LampStep.Fit(
                        lamp.id(),
                        new Hanging(hanging.place(), hanging.mount(), Optional.of(timer), Optional.empty(), gear)));
    }

    private void make(int daysAgo, RigStep step) {
        RigEntry entry = new RigEntry(
                site.id(), enclosureId, daysAgo(daysAgo), "", lead.personId(), UUID.randomUUID(), Optional.empty());
        changing.make(entry, step);
    }

    private long fresh() {
        return collection
                .lamp(site, collection.lampModel(site, LampClass.TUBE_T5))
                .id();
    }

    private Instant daysAgo(int days) {
        return now.minus(Duration.ofDays(days));
    }

    private long fittingId() {
        return rigs.at(site.id(), enclosureId, now).fittings().get(0).id();
    }

    private Hanging hanging() {
        return rigs.at(site.id(), enclosureId, now).fittings().get(0).hanging();
    }
}
