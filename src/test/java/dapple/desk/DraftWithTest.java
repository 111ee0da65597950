package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.rig.Ballast;
import dapple.rig.Gear;
import dapple.rig.Hanging;
import dapple.testing.DraftedHomes;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DraftWithTest {
    @Test
    void aLampThatIsHungHigherKeepsWhatFeedsIt() {
        Hanging fed = DraftedHomes.hanging(0.6).with(Gear.on(Ballast.THERE));
        DraftLamp lamp = new DraftLamp(Optional.of(1L), new LampPick.Stock(1), fed);
        DraftRig higher = DraftWith.height(new DraftRig(List.of(lamp), List.of(), List.of()), 0, 0.8);
        assertThat(higher.lamps().get(0).hanging().gear()).isEqualTo(Gear.on(Ballast.THERE));
    }
}
