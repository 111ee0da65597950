package dapple.check;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.SpectrumEvidence;
import dapple.rig.FittingFacts;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What the lamps themselves say, wherever they hang. */
final class LampRules {
    /** Lamps whose ultraviolet has been seen to fall below the target within months. */
    private static final Set<LampClass> SHORT_LIVED = EnumSet.of(LampClass.METAL_HALIDE, LampClass.MERCURY_VAPOUR);

    private LampRules() {}

    static Checked spectrum(Case seen) {
        List<FittingFacts> lamps = seen.fittings(LampClass::emitsUltraviolet);
        List<FittingFacts> faulty = those(lamps, lamp -> lamp.model().hasShortWaves());
        List<FittingFacts> without = those(lamps, lamp -> lamp.model().lacksSpectrum());
        List<FittingFacts> waived = those(lamps, lamp -> lamp.model().evidence() instanceof SpectrumEvidence.Waived);
        if (lamps.isEmpty()) {
            return Checked.holds(TradeCheck.SPECTRUM, "no-lamp");
        }
        if (!faulty.isEmpty()) {
            return Checked.fails(TradeCheck.SPECTRUM, "short-waves", Case.tags(faulty))
                    .by(faulty.size());
        }
        if (!without.isEmpty()) {
            return Checked.fails(TradeCheck.SPECTRUM, "missing", Case.tags(without))
                    .by(without.size());
        }
        return waived.isEmpty()
                ? Checked.holds(TradeCheck.SPECTRUM, "filed", Case.tags(lamps)).by(0)
                : Checked.holds(TradeCheck.SPECTRUM, "waived", Case.tags(waived), signers(waived))
                        .by(0);
    }

    private static List<FittingFacts> those(List<FittingFacts> fittings, Predicate<LampFacts> wanted) {
        return fittings.stream().filter(fitting -> wanted.test(fitting.lamp())).toList();
    }

    private static String signers(List<FittingFacts> waived) {
        return waived.stream()
                .map(fitting -> fitting.lamp().model().evidence())
                .map(evidence -> ((SpectrumEvidence.Waived) evidence).by())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    static Checked lasting(Case seen) {
        List<FittingFacts> lamps = seen.fittings(LampClass::emitsUltraviolet);
        List<FittingFacts> others = seen.fittings(kind -> kind.emitsUltraviolet() && !SHORT_LIVED.contains(kind));
        if (lamps.isEmpty()) {
            return Checked.holds(TradeCheck.LASTING, "no-lamp");
        }
        Checked found = others.isEmpty()
                ? Checked.fails(TradeCheck.LASTING, "alone", Case.tags(lamps))
                : Checked.holds(TradeCheck.LASTING, "beside", Case.tags(others));
        return found.by(others.size());
    }
}
