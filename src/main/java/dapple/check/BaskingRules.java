package dapple.check;

import dapple.check.RestingLight.Sample;
import dapple.lamp.LampClass;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.List;
import java.util.Optional;

/** Whether what belongs together falls together, and whether the rest is lit as well. */
final class BaskingRules {
    /** Where there is most of the one there must be this share of the most of the other: ours, no source. */
    static final double LEAST_TOGETHER = 0.5;

    /** The share of the light away from the basking place that must come from lamps without a beam: ours, no source. */
    static final double LEAST_BACKGROUND = 0.5;

    private BaskingRules() {}

    static Checked together(Case seen) {
        if (seen.fittings(LampClass::emitsUltraviolet).isEmpty()
                && !seen.fittings(LampClass::givesLight).isEmpty()) {
            return Checked.fails(TradeCheck.TOGETHER, "no-lamp").by(0);
        }
        for (Quantity quantity : List.of(Quantity.UV_INDEX, Quantity.ILLUMINANCE)) {
            if (!seen.isWhole(quantity)) {
                return Checked.unknown(TradeCheck.TOGETHER, "not-" + quantity, seen.missing(quantity));
            }
        }
        Optional<Sample> sunniest = seen.resting().most(Quantity.UV_INDEX);
        Optional<Sample> brightest = seen.resting().most(Quantity.ILLUMINANCE);
        if (sunniest.isEmpty() || brightest.isEmpty()) {
            return Checked.unknown(TradeCheck.TOGETHER, "no-place");
        }
        return together(seen, sunniest.get(), brightest.get());
    }

    private static Checked together(Case seen, Sample sunniest, Sample brightest) {
        Optional<Sample> warmest =
                Optional.of(Quantity.IR_A).filter(seen::isWhole).flatMap(seen.resting()::most);
        double ultraviolet = share(brightest, sunniest, Quantity.UV_INDEX);
        double light = share(sunniest, brightest, Quantity.ILLUMINANCE);
        double heat =
                warmest.map(place -> share(sunniest, place, Quantity.IR_A)).orElse(1.0);
        double warmUltraviolet =
                warmest.map(place -> share(place, sunniest, Quantity.UV_INDEX)).orElse(1.0);
        if (!(ultraviolet >= LEAST_TOGETHER)) {
            return said(seen, "no-ultraviolet", ultraviolet, brightest);
        }
        if (!(light >= LEAST_TOGETHER)) {
            return said(seen, "no-light", light, sunniest);
        }
        if (!(heat >= LEAST_TOGETHER)) {
            return said(seen, "no-heat", heat, sunniest);
        }
        if (!(warmUltraviolet >= LEAST_TOGETHER)) {
            return said(seen, "hot-without", warmUltraviolet, warmest.orElseThrow());
        }
        double least = Math.min(Math.min(ultraviolet, light), Math.min(heat, warmUltraviolet));
        return Checked.holds(TradeCheck.TOGETHER, warmest.isPresent() ? "all" : "without-heat", seen.percent(least))
                .by(least);
    }

    private static Checked said(Case seen, String what, double share, Sample where) {
        return Checked.fails(TradeCheck.TOGETHER, what, seen.percent(share), seen.place(where.place()))
                .by(share);
    }

    /** What is found at one place of the most that another has. */
    private static double share(Sample here, Sample most, Quantity quantity) {
        return here.amount(quantity) / most.amount(quantity);
    }

    static Checked background(Case seen) {
        Optional<Vec> basking = seen.baskingPlace();
        if (!seen.isWhole(Quantity.ILLUMINANCE)) {
            return Checked.unknown(TradeCheck.BACKGROUND, "not-predicted", seen.missing(Quantity.ILLUMINANCE));
        }
        if (basking.isEmpty() || seen.resting().samples().isEmpty()) {
            return Checked.unknown(TradeCheck.BACKGROUND, "no-place");
        }
        List<Sample> away = away(seen.resting().samples(), basking.get());
        double all = away.stream()
                .mapToDouble(sample -> sample.amount(Quantity.ILLUMINANCE))
                .sum();
        if (!(all > 0)) {
            return Checked.fails(TradeCheck.BACKGROUND, "dark").by(0);
        }
        double share =
                away.stream().mapToDouble(sample -> ofBackground(seen, sample)).sum() / all;
        String lux = seen.formats().predicted(Quantity.ILLUMINANCE, all / away.size());
        String percent = seen.percent(share);
        Checked found = share >= LEAST_BACKGROUND
                ? Checked.holds(TradeCheck.BACKGROUND, "lit", percent, lux)
                : Checked.fails(TradeCheck.BACKGROUND, "spill", percent, lux);
        return found.by(share);
    }

    /** The places in the farther half, as far as the farthest is away. */
    private static List<Sample> away(List<Sample> samples, Vec from) {
        double farthest = samples.stream()
                .mapToDouble(sample -> distance(sample, from))
                .max()
                .orElse(0);
        return samples.stream()
                .filter(sample -> distance(sample, from) >= farthest / 2)
                .toList();
    }

    private static double distance(Sample sample, Vec from) {
        return Math.hypot(sample.place().x() - from.x(), sample.place().y() - from.y());
    }

    private static double ofBackground(Case seen, Sample sample) {
        List<Lamp> lamps = seen.rig().scene().lamps();
        double sum = 0;
        for (int index = 0; index < lamps.size(); index++) {
            if (!SpotsRule.isBeam(lamps.get(index))) {
                sum += sample.light().byLamp().get(index).getOrDefault(Quantity.ILLUMINANCE, 0.0);
            }
        }
        return sum;
    }
}
