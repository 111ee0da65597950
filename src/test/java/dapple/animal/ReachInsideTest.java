package dapple.animal;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.ReachKind;
import dapple.enclosure.StatedReach;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReachInsideTest {
    private static final Optional<StatedReach> NOTHING = Optional.empty();
    private static final Optional<StatedReach> GROUND =
            Optional.of(new StatedReach(ReachKind.GROUND, Optional.of(0.3)));
    private static final Optional<StatedReach> JUMPS = Optional.of(new StatedReach(ReachKind.JUMPS, Optional.empty()));

    @Test
    void whatIsStatedOfTheEnclosureCounts() {
        assertThat(reach(GROUND, 0.1, 0.2).groundMetres()).contains(0.3);
        assertThat(reach(JUMPS, 0.1, 0.2).groundMetres()).isEmpty();
    }

    @Test
    void whereNothingIsStatedWhoReachesFarthestCounts() {
        assertThat(reach(NOTHING, 0.1, 0.2).groundMetres()).contains(0.2);
    }

    @Test
    void oneWhoClimbsReachesEverything() {
        List<Occupant> both = List.of(occupant(new Reach(Optional.of(0.1))), occupant(Reach.EVERYWHERE));
        assertThat(ReachInside.of(NOTHING, both).groundMetres()).isEmpty();
    }

    @Test
    void whereNobodyLivesEverythingCounts() {
        assertThat(reach(NOTHING).groundMetres()).isEmpty();
    }

    @Test
    void isExceededByWhoComesFartherThanStated() {
        assertThat(reach(GROUND, 0.31).isExceeded()).isTrue();
        assertThat(ReachInside.of(GROUND, List.of(occupant(Reach.EVERYWHERE))).isExceeded())
                .isTrue();
    }

    @Test
    void isNotExceededByWhoComesJustAsFar() {
        assertThat(reach(GROUND, 0.3).isExceeded()).isFalse();
        assertThat(ReachInside.of(JUMPS, List.of(occupant(Reach.EVERYWHERE))).isExceeded())
                .isFalse();
        assertThat(reach(NOTHING, 0.3).isExceeded()).isFalse();
    }

    private static ReachInside reach(Optional<StatedReach> stated, double... metres) {
        return ReachInside.of(
                stated,
                Arrays.stream(metres)
                        .mapToObj(one -> occupant(new Reach(Optional.of(one))))
                        .toList());
    }

    private static Occupant occupant(Reach reach) {
        AnimalFacts animal = new AnimalFacts(1, "2026-1", "Basil", 1, AnimalKind.INDIVIDUAL, Pigment.NORMAL);
        return new Occupant(animal, "Species", reach, Optional.empty());
    }
}
