package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.order.OrderFacts;
import dapple.order.Ordered;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A target of a UV index of 2.9 to 7.4 that holds from 1 May 2026 on, for an animal that moved in on 3 May. */
class HeldTest {
    private static final Instant APPROVED = Instant.parse("2026-05-01T00:00:00Z");
    private static final Instant MOVED_IN = Instant.parse("2026-05-03T00:00:00Z");
    private static final Limits LIMITS = new Limits(new Band(2.9, 7.4), 0.3, 8);
    private static final List<Held> TARGET = List.of(new Held(APPROVED, Instant.MAX, LIMITS, "target 1"));

    @Test
    void theTargetHoldsUntilAnOrderBegins() {
        assertThat(under("2026-05-10T00:00:00Z", "2026-05-20T00:00:00Z").get(0).until())
                .isEqualTo("2026-05-10T00:00:00Z");
    }

    @Test
    void theOrderCutsTheTargetWhileItHolds() {
        Held during = under("2026-05-10T00:00:00Z", "2026-05-20T00:00:00Z").get(1);
        assertThat(during.until()).isEqualTo("2026-05-20T00:00:00Z");
        assertThat(during.limits().basking()).isEqualTo(new Band(2.9, 4));
        assertThat(during.name()).isEqualTo("order");
    }

    @Test
    void theTargetHoldsAgainAfterIt() {
        Held after = under("2026-05-10T00:00:00Z", "2026-05-20T00:00:00Z").get(2);
        assertThat(after).isEqualTo(new Held(Instant.parse("2026-05-20T00:00:00Z"), Instant.MAX, LIMITS, "target 1"));
    }

    @Test
    void anOrderFromBeforeTheMoveCountsSinceTheMove() {
        List<Held> held = under("2026-05-02T00:00:00Z", "2026-05-20T00:00:00Z");
        assertThat(held.get(1).from()).isEqualTo(MOVED_IN);
    }

    @Test
    void anOrderThatWasOverBeforeTheMoveChangesNothing() {
        assertThat(under("2026-05-01T00:00:00Z", "2026-05-02T00:00:00Z")).isEqualTo(TARGET);
    }

    @Test
    void withoutATargetTheOrderAloneIsDrawn() {
        Ordered ordered = new Ordered.Cap(4);
        List<Held> held = Held.under(
                order(ordered, "2026-05-10T00:00:00Z", "2026-05-20T00:00:00Z"), MOVED_IN, List.of(), "order");
        assertThat(held).extracting(Held::limits).containsExactly(new Limits(Band.atMost(4), 4, 4));
    }

    private static List<Held> under(String from, String to) {
        return Held.under(order(new Ordered.Cap(4), from, to), MOVED_IN, TARGET, "order");
    }

    private static OrderFacts order(Ordered ordered, String from, String to) {
        return new OrderFacts(
                1,
                1,
                ordered,
                "eyes shut",
                Instant.parse(from),
                LocalDate.parse("2026-05-19"),
                Instant.parse(to),
                1,
                Instant.parse(from),
                Optional.empty(),
                Optional.empty());
    }
}
