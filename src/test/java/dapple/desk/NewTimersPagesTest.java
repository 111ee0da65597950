package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.lamp.LampClass;
import dapple.rig.DailyTimer;
import dapple.rig.Hanging;
import dapple.rig.LampTimer;
import dapple.rig.RigExamples;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.Photoperiod;
import dapple.target.Targets;
import dapple.target.ZoneLimits;
import dapple.testing.DraftedHomes;
import dapple.testing.DraftedHomes.Drafted;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A tube hangs there that burns from 8 to 18 o'clock. */
@PagesTest
class NewTimersPagesTest {
    @Autowired
    private DraftedHomes homes;

    @Autowired
    private TestCollection collection;

    @Autowired
    private DeskOpening desks;

    @Autowired
    private NewTimers timers;

    @Autowired
    private Targets targets;

    @Autowired
    private ZoneLimits zoneLimits;

    private Drafted at;

    @BeforeEach
    void furnish() {
        at = homes.lit();
    }

    @Test
    void aLampToBuyTakesTheTimerOfItsKindAndSaysWhose() {
        NewTimers.Timed timed = timed(LampClass.TUBE_T5, Optional.empty());
        assertThat(timer(timed)).contains(RigExamples.tenHours());
        assertThat(timed.told())
                .singleElement()
                .asString()
                .contains("the timer of " + at.rig().fittings().get(0).lamp().tag());
    }

    @Test
    void aTimerThatWasChosenStays() {
        DailyTimer chosen = new DailyTimer(LocalTime.of(10, 0), LocalTime.of(11, 0));
        NewTimers.Timed timed = timed(LampClass.TUBE_T5, Optional.of(chosen));
        assertThat(timer(timed)).contains(chosen);
        assertThat(timed.told()).isEmpty();
    }

    @Test
    void aLampOfAnotherKindHasNoneWhereNobodySaysHowLong() {
        assertThat(timer(timed(LampClass.TUNGSTEN_HALOGEN, Optional.empty()))).isEmpty();
    }

    /** By hand: 11 h around 13:00, the middle of the tube's day, are 7:30 to 18:30. */
    @Test
    void aLampOfAnotherKindIsLitAsLongAsTheTargetAsks() {
        ask(11);
        NewTimers.Timed timed = timed(LampClass.TUNGSTEN_HALOGEN, Optional.empty());
        assertThat(timer(timed)).contains(new DailyTimer(LocalTime.of(7, 30), LocalTime.of(18, 30)));
        assertThat(timed.told())
                .singleElement()
                .asString()
                .contains("as long as the target of Tiliqua scincoides asks for");
    }

    private void ask(double hours) {
        UvZone zone = new UvZone(2, LightMethod.SUNBEAM);
        Photoperiod light =
                new Photoperiod(Collections.nCopies(Photoperiod.MONTHS, hours), SourceMark.FROM_MEMORY, "for a test");
        Approval approval = new Approval(
                at.skink().id(),
                zone,
                zoneLimits.of(zone),
                Optional.of(light),
                at.lead().personId(),
                "for a test");
        targets.approveAfter(at.site().id(), 1, approval);
    }

    private NewTimers.Timed timed(LampClass lampClass, Optional<LampTimer> timer) {
        LampPick pick =
                new LampPick.Model(collection.lampModel(at.site(), lampClass).id());
        Hanging hanging = new Hanging("new", Optional.of(RigExamples.above(0.3, 0.3, 0.68)), timer, Optional.empty());
        List<DraftLamp> lamps = new ArrayList<>(at.installed().lamps());
        lamps.add(new DraftLamp(Optional.empty(), pick, hanging));
        Desk desk = desks.of(at.lead(), at.home().enclosureId());
        return timers.of(desk, new DraftRig(lamps, List.of(), List.of()));
    }

    private static Optional<LampTimer> timer(NewTimers.Timed timed) {
        return timed.rig().lamps().get(1).hanging().timer();
    }
}
