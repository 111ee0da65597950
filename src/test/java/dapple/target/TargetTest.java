package dapple.target;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class TargetTest {
    @Test
    void limitsAnotherQuantityWhereItSaysSo() {
        assertThat(target(Quantity.SURFACE_TEMPERATURE).limits(Quantity.SURFACE_TEMPERATURE))
                .contains(new Limits(new Band(38, 42), Band.OPEN, Limits.NO_CEILING));
    }

    @Test
    void limitsTheUvIndexAsAWholeOrNotAtAll() {
        assertThat(target(Quantity.UV_INDEX).limits(Quantity.UV_INDEX)).isEmpty();
    }

    @Test
    void saysNothingOfAQuantityThatItDoesNotName() {
        assertThat(target(Quantity.SURFACE_TEMPERATURE).limits(Quantity.AIR_TEMPERATURE))
                .isEmpty();
    }

    private static Target target(Quantity quantity) {
        SourcedLimit basking =
                new SourcedLimit(quantity, LimitPlace.BASKING, new Band(38, 42), SourceMark.FROM_MEMORY, "for a test");
        return new Target(1, 1, 1, new UvZone(3, LightMethod.SUNBEAM), Instant.EPOCH, Instant.EPOCH, List.of(basking));
    }
}
