package dapple.light.design;

import static dapple.light.design.Column.COLUMN;
import static dapple.light.design.Column.FLOOR;
import static dapple.light.design.Column.LEVEL;
import static dapple.light.design.Column.atHand;
import static dapple.light.design.Column.none;
import static dapple.light.design.Column.open;
import static dapple.light.design.Column.task;
import static dapple.light.design.Column.uv;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.design.Binding.Why;
import dapple.light.field.Receiver;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ObstaclesTest {
    /** At 50 cm alone the floor has its 4, and then 10 cm above it there is 1/0.4² = 6.25. */
    @Test
    void namesTheCeilingThatLiesBelowWhatTheBandNeeds() {
        Receiver perch = new Receiver(new Vec(0, 0, 0.1), LEVEL);
        Demand ceiling = Demand.ceiling("ceiling", Quantity.UV_INDEX, List.of(perch), 3);
        ProposalAnswer.NoneFound none = none(task(open(), List.of(atHand()), COLUMN, uv(3.5, 4.5), ceiling));
        assertThat(none.isExhaustive()).isTrue();
        assertThat(none.bindings())
                .extracting(binding -> binding.demand().name())
                .containsExactly("basking", "ceiling");
    }

    /** As above: 6.25 over 3. */
    @Test
    void saysByWhatFactorADemandBinds() {
        Receiver perch = new Receiver(new Vec(0, 0, 0.1), LEVEL);
        Demand ceiling = Demand.ceiling("ceiling", Quantity.UV_INDEX, List.of(perch), 3);
        Binding binding = none(task(open(), List.of(atHand()), COLUMN, uv(3.5, 4.5), ceiling))
                .bindings()
                .get(1);
        assertThat(binding.why()).isEqualTo(Why.TOO_MUCH);
        assertThat(binding.missingFactor())
                .hasValueSatisfying(factor -> assertThat(factor).isCloseTo(6.25 / 3, within(0.01)));
        assertThat(binding.rig().orElseThrow().lamps().get(0).placeId()).hasValue("50 cm");
    }

    @Test
    void namesTheQuantityThatNoLampGives() {
        Demand warmth = Demand.basking("warmth", Quantity.IR_A, FLOOR, new Band(100, 200));
        ProposalAnswer.NoneFound none = none(task(open(), List.of(atHand()), COLUMN, uv(3.5, 4.5), warmth));
        assertThat(none.bindings()).singleElement().satisfies(binding -> {
            assertThat(binding.demand().name()).isEqualTo("warmth");
            assertThat(binding.why()).isEqualTo(Why.NO_LAMP_GIVES_IT);
            assertThat(binding.missingFactor()).isEmpty();
        });
    }

    @Test
    void saysThatNoLightArrives() {
        Solid roof = Box.of(new Vec(-2, -2, 0.1), new Vec(2, 2, 0.15), 0);
        Frame frame = new Frame(0.001, List.of(), List.of(roof), Optional.empty());
        assertThat(none(task(frame, List.of(atHand()), COLUMN, uv(1, 2))).bindings())
                .extracting(Binding::why)
                .containsExactly(Why.NONE_ARRIVES);
    }

    /** The nearest is 20 cm with 25 where 50 are asked: two lamps are not allowed so near to one another. */
    @Test
    void saysTheNearestRigWhereAllIsTooWeak() {
        ProposalAnswer.NoneFound none = none(task(open(), List.of(atHand()), COLUMN, uv(50, 60)));
        assertThat(none.nearest().unmet())
                .singleElement()
                .satisfies(missed -> assertThat(missed.missingFactor()).isCloseTo(2, within(0.01)));
        assertThat(none.bindings()).extracting(Binding::why).containsExactly(Why.TOO_LITTLE);
    }
}
