package dapple.check;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.site.Caution;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ChangedChecksTest {
    private static final Checks BEFORE = checks(
            Checked.fails(TradeCheck.PATCH, "small", "12 cm", "20 cm"),
            Checked.holds(TradeCheck.FIRE, "far"),
            Checked.fails(TradeCheck.SEASON, "long"));
    private static final ChangedChecks CHANGED = ChangedChecks.between(
            BEFORE,
            checks(
                    Checked.fails(TradeCheck.PATCH, "small", "14 cm", "20 cm"),
                    Checked.fails(TradeCheck.FIRE, "close"),
                    Checked.holds(TradeCheck.SEASON, "right")));

    private static Checks checks(Checked... all) {
        return new Checks(Stream.of(all).toList());
    }

    @Test
    void whatChangesIsSaidGravestFirst() {
        assertThat(CHANGED.changed())
                .extracting(change -> change.after().check())
                .containsExactly(TradeCheck.FIRE, TradeCheck.SEASON);
    }

    @Test
    void whatGoesOnFailingIsSaidAsItWouldBe() {
        assertThat(CHANGED.still()).extracting(Checked::words).containsExactly(List.of("14 cm", "20 cm"));
    }

    @Test
    void theCautionsOfWhatNoLongerHoldsAreShown() {
        assertThat(CHANGED.cautions()).containsExactly(Caution.HEAT, Caution.MAINS);
    }

    @Test
    void betweenTheSameNothingChanges() {
        assertThat(ChangedChecks.between(BEFORE, BEFORE).changed()).isEmpty();
    }

    @Test
    void whatFailsGoesFirstThenWhatCannotBeSaid() {
        Checks checks = checks(
                Checked.holds(TradeCheck.CEILING, "under"),
                Checked.unknown(TradeCheck.BALLAST, "not-on-record"),
                Checked.fails(TradeCheck.SEASON, "long"));
        assertThat(checks.all())
                .extracting(Checked::check)
                .containsExactly(TradeCheck.SEASON, TradeCheck.BALLAST, TradeCheck.CEILING);
    }
}
