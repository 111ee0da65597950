package dapple.demo;

import dapple.demo.DemoRigRows.Bulb;
import dapple.demo.DemoRigRows.Hung;
import dapple.demo.DemoRigRows.Model;
import dapple.demo.DemoRows.Space;
import dapple.demo.DemoRows.Spot;
import dapple.enclosure.PointFacts;
import dapple.light.field.Field;
import dapple.light.quantity.Quantity;
import dapple.rig.RigScene;
import dapple.site.Given;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The light that there really was in the demo's enclosures, week by week: what the engine says, times what became of it. */
final class DemoPast {
    static final int WEEKS = 104;

    private static final Duration YEAR = Duration.ofDays(365);
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double DAYS = 365;
    private static final String LASTING = "LED";

    private final Map<String, DemoLampLife> lives = new HashMap<>();
    private final DemoFailures failures = DemoFailures.read();

    /** @param now when the story ends, to which the table's burn hours belong */
    DemoPast(DemoRigRows rows, List<Space> spaces, Instant begin, Instant now) {
        Map<String, Bulb> bulbs = rows.lamps().stream().collect(Collectors.toMap(Bulb::tag, Function.identity()));
        Map<String, Model> models = rows.models().stream()
                .collect(Collectors.toMap(model -> model.change().name(), Function.identity()));
        for (Hung hung : rows.fittings()) {
            if (spaces.stream().anyMatch(space -> space.isGenerated() && space.code().equals(hung.enclosure()))) {
                Bulb bulb = bulbs.getOrDefault(hung.tag(), rows.lamps().get(0));
                Model model = models.getOrDefault(bulb.model(), rows.models().get(0));
                lives.put(hung.tag(), life(hung, bulb, model, new DemoLampLife.Span(begin, now)));
            }
        }
    }

    private static DemoLampLife life(Hung hung, Bulb bulb, Model model, DemoLampLife.Span span) {
        double hoursADay = hung.timer()
                        .onWithin(span.end().minus(YEAR), span.end(), DemoTeam.ZONE)
                        .toSeconds()
                / SECONDS_PER_HOUR
                / DAYS;
        boolean isSwapped = !bulb.model().startsWith(LASTING);
        double loss = model.change().lampClass().usualLossPerHour();
        return DemoLampLife.of(bulb.tag(), bulb.burnHours(), hoursADay, loss, isSwapped, span);
    }

    /** The lamps of the generated enclosures by the tag of the one that hangs there now. */
    Map<String, DemoLampLife> lives() {
        return Map.copyOf(lives);
    }

    DemoFailures failures() {
        return failures;
    }

    /** What falls on a point: of each lamp by the tag of the one that hung there first; empty where no lamp is known. */
    static List<Lit> lit(RigScene rig, PointFacts point, Map<String, DemoLampLife> byFirstTag) {
        return rig.receiver(point).filter(receiver -> rig.isPredictable()).stream()
                .flatMap(receiver -> {
                    List<Map<Quantity, Double>> given =
                            Field.of(rig.scene()).at(receiver).byLamp();
                    return IntStream.range(0, given.size())
                            .mapToObj(index -> new Lit(
                                    Given.of(byFirstTag.get(
                                            rig.scene().lamps().get(index).id())),
                                    given.get(index)));
                })
                .toList();
    }

    /** The true amount at a point at an instant of a week; where no lamp is known, what the table says. */
    double amount(Spot spot, List<Lit> lit, Quantity quantity, int week, Instant at) {
        double given = lit.isEmpty()
                ? spot.firstUvi()
                : lit.stream().mapToDouble(one -> one.amount(quantity, at)).sum();
        return given * failures.times(spot.enclosure(), week, quantity);
    }

    /** What a lamp gives at a point as it is stated, and how it ages. */
    record Lit(DemoLampLife life, Map<Quantity, Double> given) {
        private double amount(Quantity quantity, Instant at) {
            return given.getOrDefault(quantity, 0.0) * life.output(at);
        }
    }
}
