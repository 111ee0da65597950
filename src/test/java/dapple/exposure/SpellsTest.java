package dapple.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalKind;
import dapple.animal.Pigment;
import dapple.animal.StayFacts;
import dapple.enclosure.PlannedOffTime;
import dapple.light.dose.Circumstance;
import dapple.light.dose.Span;
import dapple.light.dose.Spell;
import dapple.rig.RigChangeFacts;
import dapple.rig.RigChangeKind;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SpellsTest {
    private static final long HERE = 7;
    private static final long ELSEWHERE = 8;
    private static final StayFacts STAY = new StayFacts(
            1,
            HERE,
            new AnimalFacts(1, "2026-1", "Basil", 1, AnimalKind.INDIVIDUAL, Pigment.NORMAL),
            day(1),
            Optional.of(day(28)));

    @Test
    void aStayInWhichNothingChangedIsOneSpell() {
        assertThat(Spells.of(STAY, List.of(), List.of())).containsExactly(lamps(1, 28));
    }

    @Test
    void whoLeavesAGroupStaysUnderTheSameLight() {
        assertThat(Spells.of(List.of(stay(HERE, 1, 9), stay(HERE, 9, 28)), List.of(), List.of()))
                .containsExactly(lamps(1, 28));
    }

    @Test
    void anotherEnclosureIsAnotherSpell() {
        assertThat(Spells.of(List.of(stay(HERE, 1, 9), stay(ELSEWHERE, 9, 28)), List.of(), List.of()))
                .containsExactly(lamps(1, 9), lamps(9, 28));
    }

    @Test
    void timeAwayPartsTwoStaysInOneEnclosure() {
        assertThat(Spells.of(List.of(stay(HERE, 1, 9), stay(HERE, 12, 28)), List.of(), List.of()))
                .containsExactly(lamps(1, 9), lamps(12, 28));
    }

    private static StayFacts stay(long enclosureId, int from, int to) {
        return new StayFacts(from, enclosureId, STAY.animal(), day(from), Optional.of(day(to)));
    }

    @ParameterizedTest
    @EnumSource
    void readingsTellNothingBeyondAChangeOfWhatTheyDependOn(RigChangeKind kind) {
        boolean isSameLight = EnumSet.of(RigChangeKind.TIMER_CHANGED, RigChangeKind.FIRST_SET_UP)
                .contains(kind);
        assertThat(Spells.of(STAY, List.of(change(HERE, 9, kind)), List.of())).hasSize(isSameLight ? 1 : 2);
    }

    @Test
    void aChangeElsewhereIsNoChange() {
        assertThat(Spells.of(STAY, List.of(change(ELSEWHERE, 9, RigChangeKind.LAMP_SWAPPED)), List.of()))
                .hasSize(1);
    }

    @Test
    void aTimePlannedOffIsASpellOfItsOwn() {
        assertThat(Spells.of(STAY, List.of(), List.of(off(HERE, 5, Optional.of(day(9))))))
                .containsExactly(
                        lamps(1, 5), new Spell(new Span(day(5), day(9)), Circumstance.PLANNED_OFF), lamps(9, 28));
    }

    @Test
    void aTimePlannedOffWithoutEndLastsThroughTheStay() {
        assertThat(Spells.of(STAY, List.of(), List.of(off(HERE, 5, Optional.empty()))))
                .containsExactly(lamps(1, 5), new Spell(new Span(day(5), day(28)), Circumstance.PLANNED_OFF));
    }

    @Test
    void aTimePlannedOffElsewhereIsNoChange() {
        assertThat(Spells.of(STAY, List.of(), List.of(off(ELSEWHERE, 5, Optional.empty()))))
                .hasSize(1);
    }

    private static Instant day(int day) {
        return Instant.parse("2026-02-01T00:00:00Z").plusSeconds(86_400L * (day - 1));
    }

    private static Spell lamps(int from, int to) {
        return new Spell(new Span(day(from), day(to)), Circumstance.UNDER_LAMPS);
    }

    private static RigChangeFacts change(long enclosure, int day, RigChangeKind kind) {
        return new RigChangeFacts(1, enclosure, day(day), kind, "", day(day), 1);
    }

    private static PlannedOffTime off(long enclosure, int from, Optional<Instant> to) {
        return new PlannedOffTime(enclosure, day(from), to, "rest");
    }
}
