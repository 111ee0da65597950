package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.animal.Resident;
import dapple.light.judging.State;
import dapple.overview.AuditStory.Told;
import dapple.reading.HistoryVerdict;
import dapple.reading.ReadingOnRecord;
import dapple.rig.FittingFacts;
import dapple.testing.StorageTest;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A story in which facts come late, asked about at several instants. */
@StorageTest
class AuditingStorageTest {
    @Autowired
    private AuditStory story;

    @Autowired
    private Auditing auditing;

    private Told told;

    @BeforeEach
    void begin() {
        told = story.begin();
    }

    @Test
    void aLampThatIsRecordedLateHungThereAllTheSame() {
        Instant before = told.now();
        told.hangALampLate();
        FittingFacts fitting = sheet(before).rig().rig().fittings().get(0);
        assertThat(fitting.span().begunRecordedAt()).isAfter(before);
    }

    @Test
    void theChangeThatMadeAPartIsTold() {
        Instant then = told.hangALampLate();
        AuditSheet sheet = sheet(then);
        long begunBy = sheet.rig().rig().fittings().get(0).span().begunBy();
        assertThat(sheet.rig().changes().get(begunBy))
                .returns("for a test", change -> change.note())
                .returns(told.person.personId(), change -> change.recordedBy());
    }

    @Test
    void nothingHungThereBeforeItWasHung() {
        told.hangALampLate();
        assertThat(sheet(told.minutesAgo(200)).rig().rig().isEmpty()).isTrue();
    }

    @Test
    void aLampThatIsTakenOutLateWasOnRecordThen() {
        Instant then = told.hangALampLate();
        told.takeItOutLate();
        assertThat(sheet(then).rig().rig().fittings()).isEmpty();
        assertThat(sheet(then).rig().saidThen().fittings()).hasSize(1);
    }

    @Test
    void aLampThatWasNeverOnRecordThenIsNotSaidToHaveBeen() {
        told.hangALampLate();
        Instant after = told.takeItOutLate();
        assertThat(sheet(told.minutesAgo(60)).rig().saidThen().fittings()).isEmpty();
        assertThat(sheet(after).rig().saidThen().fittings()).isEmpty();
    }

    @Test
    void peopleWereToldTheVerdictThatStood() {
        Instant then = told.read();
        Instant later = told.calibrateLate();
        assertThat(states(reading(then).told())).containsExactly(Optional.of(State.ON_TARGET));
        assertThat(states(reading(then).now())).containsExactly(Optional.of(State.TOO_WEAK));
        assertThat(states(reading(later).told())).containsExactly(Optional.of(State.TOO_WEAK));
    }

    @Test
    void whatIsJudgedOtherwiseNowSaysSo() {
        Instant then = told.read();
        assertThat(reading(then).isJudgedOtherwise()).isFalse();
        told.calibrateLate();
        assertThat(reading(then).isJudgedOtherwise()).isTrue();
    }

    @Test
    void aVerdictNamesItsCalibrationWithFactor() {
        told.read();
        HistoryVerdict verdict = reading(told.calibrateLate()).told().get(0);
        assertThat(verdict.certificate()).contains("C-17");
        assertThat(verdict.factor()).contains(AuditStory.FACTOR);
    }

    @Test
    void aCorrectionThatCameLaterStandsBesideWhatItCorrects() {
        Instant then = told.read();
        told.correct();
        List<ReadingOnRecord> lines = sheet(then).readings();
        assertThat(lines)
                .extracting(line -> line.reading().amount())
                .containsExactly(AuditStory.SHOWN, AuditStory.CORRECTED);
        assertThat(lines).extracting(ReadingOnRecord::standsThen).containsExactly(true, false);
        assertThat(lines.get(1).told()).isEmpty();
    }

    @Test
    void whatWasCorrectedBeforeIsLeftOut() {
        told.read();
        assertThat(sheet(told.correct()).readings())
                .extracting(line -> line.reading().amount())
                .containsExactly(AuditStory.CORRECTED);
    }

    @Test
    void theNewestReadingAtAnInstantIsNotALaterOne() {
        Instant before = told.now();
        Instant then = told.read();
        Instant later = told.read();
        assertThat(sheet(before).readings()).isEmpty();
        assertThat(reading(then).reading().id())
                .isLessThan(reading(later).reading().id());
    }

    @Test
    void anOrderIsShownWhileItIsInForce() {
        Instant before = told.now();
        Instant after = told.order();
        assertThat(sheet(before).orders()).isEmpty();
        assertThat(sheet(after).orders()).containsOnlyKeys(told.home.animal().id());
    }

    @Test
    void aTargetIsShownSinceItsApproval() {
        assertThat(sheet(told.now()).targets()).hasSize(1);
        assertThat(sheet(told.minutesAgo(30)).targets()).isEmpty();
    }

    @Test
    void anAnimalIsShownSinceItCame() {
        Resident resident = sheet(told.now()).residents().get(0);
        assertThat(resident.count()).isEqualTo(1);
        assertThat(sheet(told.minutesAgo(90)).residents()).isEmpty();
    }

    @Test
    void aMoveThatIsRecordedLateIsMarked() {
        Instant then = told.minutesAgo(30);
        assertThat(sheet(then).residents().get(0).isRecordedAt(then)).isFalse();
    }

    @Test
    void anAlarmStandsUntilSomebodyHasSeenIt() {
        told.read();
        Instant quiet = told.now();
        Instant loud = told.readOverTheCeiling();
        assertThat(sheet(quiet).alarms()).isEmpty();
        assertThat(sheet(loud).alarms()).hasSize(1);
        assertThat(sheet(told.seeTheAlarm()).alarms()).isEmpty();
        assertThat(sheet(loud).alarms().get(0).seenBy()).contains(told.person.personId());
    }

    private ReadingOnRecord reading(Instant at) {
        return sheet(at).readings().get(0);
    }

    private static List<Optional<State>> states(List<HistoryVerdict> verdicts) {
        return verdicts.stream().map(HistoryVerdict::state).toList();
    }

    private AuditSheet sheet(Instant at) {
        return auditing.at(told.site.id(), told.home.enclosureId(), at, LocalDate.ofInstant(at, told.site.timeZone()));
    }
}
