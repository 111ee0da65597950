package dapple.demo;

import dapple.demo.DemoRigRows.Bulb;
import dapple.demo.DemoRigRows.Hung;
import dapple.demo.DemoRigRows.Model;
import dapple.demo.DemoRows.Space;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.light.field.Field;
import dapple.light.quantity.Quantity;
import dapple.rig.RigScene;
import dapple.site.Given;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The lamps that there were in the demo's enclosures, and what they gave: what the engine says, times what became of them.
 *
 * @param lives by the tag of the lamp that hangs there when its table ends
 */
record DemoPast(Map<String, DemoLampLife> lives) {
    private static final Duration YEAR = Duration.ofDays(365);
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double DAYS = 365;

    /** The tables' burn hours belong to now, or where a table tells the end of the story, to its beginning. */
    static DemoPast of(DemoStory.Tables tables, Instant now) {
        DemoRigRows rows = tables.rigRows();
        Map<String, Bulb> bulbs = rows.lamps().stream().collect(Collectors.toMap(Bulb::tag, Function.identity()));
        Map<String, Model> models = rows.models().stream()
                .collect(Collectors.toMap(model -> model.change().name(), Function.identity()));
        Map<String, Space> spaces =
                tables.rows().enclosures().stream().collect(Collectors.toMap(Space::code, Function.identity()));
        return new DemoPast(rows.fittings().stream().collect(Collectors.toUnmodifiableMap(Hung::tag, hung -> {
            Bulb bulb = Given.of(bulbs.get(hung.tag()));
            Instant end = Given.of(spaces.get(hung.enclosure())).isTold() ? DemoStory.toldBefore(now) : now;
            DemoLampLife.Span span = new DemoLampLife.Span(DemoStory.beginBefore(now), end);
            return DemoLampLife.of(
                    bulb.tag(), bulb.burnHours(), kind(hung, Given.of(models.get(bulb.model())), end), span);
        })));
    }

    private static DemoLampLife.Kind kind(Hung hung, Model model, Instant end) {
        LampClass lampClass = model.change().lampClass();
        double hoursADay =
                hung.timer().onWithin(end.minus(YEAR), end, DemoTeam.ZONE).toSeconds() / SECONDS_PER_HOUR / DAYS;
        boolean lasts = lampClass == LampClass.LED_BAR;
        return new DemoLampLife.Kind(hoursADay, lampClass.usualLossPerHour(), usefulHours(lampClass), lasts);
    }

    /** When this rescue swaps its lamps, h: invented, within what is usual of the class. */
    private static double usefulHours(LampClass lampClass) {
        return switch (lampClass) {
            case TUBE_T5, TUBE_T8 -> 4000;
            case COMPACT_FLUORESCENT -> 1500;
            default -> 3000;
        };
    }

    /** The lamp that hangs there when its table ends, with those before it; none of one in store. */
    Optional<DemoLampLife> life(String tag) {
        return Optional.ofNullable(lives.get(tag));
    }

    /** What falls on a point, of each lamp; empty where no lamp is known. */
    List<Lit> lit(RigScene rig, PointFacts point) {
        Map<String, DemoLampLife> byFirstTag =
                lives.values().stream().collect(Collectors.toMap(DemoLampLife::firstTag, Function.identity()));
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

    /** What a lamp gives at a point as it is stated, and how it ages. */
    record Lit(DemoLampLife life, Map<Quantity, Double> given) {
        double amount(Quantity quantity, Instant at) {
            return given.getOrDefault(quantity, 0.0) * life.output(at);
        }
    }
}
