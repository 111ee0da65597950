package dapple.lamp;

import dapple.site.Caution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A lamp model as fittings and predictions need it.
 *
 * @param watts electric power; none: not known
 * @param shape none: not known, so that nothing can be predicted
 * @param outputs one a quantity, those that are computed from the spectrum among them
 */
public record LampModelFacts(
        long id,
        String name,
        LampClass lampClass,
        Optional<Double> watts,
        Optional<LampShape> shape,
        List<LampOutput> outputs,
        SpectrumEvidence evidence) {

    public LampModelFacts {
        outputs = List.copyOf(outputs);
    }

    /** Whether it is made to emit ultraviolet and nobody knows, or answers for, which. */
    public boolean lacksSpectrum() {
        return lampClass.emitsUltraviolet() && evidence instanceof SpectrumEvidence.Missing;
    }

    /** Whether its spectrum has radiation shorter than the sun's at the ground. */
    public boolean hasShortWaves() {
        return evidence instanceof SpectrumEvidence.OnFile file
                && file.figures().hasShortWaves();
    }

    /** The cautions that belong beside every decision about such a lamp. */
    public List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        if (lampClass.emitsUltraviolet()) {
            cautions.add(Caution.ULTRAVIOLET);
        }
        if (lacksSpectrum()) {
            cautions.add(Caution.SPECTRUM);
        }
        if (hasShortWaves()) {
            cautions.add(Caution.SHORT_WAVES);
        }
        if (lampClass.needsOuterGlass()) {
            cautions.add(Caution.OUTER_GLASS);
        }
        if (lampClass.holdsMercury()) {
            cautions.add(Caution.MERCURY);
        }
        if (lampClass.isHot()) {
            cautions.add(Caution.HEAT);
        }
        cautions.add(Caution.MAINS);
        return List.copyOf(cautions);
    }
}
