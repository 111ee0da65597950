package dapple.check;

import dapple.rig.Cover;
import dapple.rig.CoverFacts;
import dapple.rig.FittingFacts;
import dapple.rig.FurnitureFacts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether a lamp is too close to what may burn, melt or scorch. */
final class FireRule {
    /** Rounding of coordinates that are entered in whole millimetres. */
    private static final double SLACK_METRES = 1e-6;

    private final Case seen;
    private final List<Gap> gaps = new ArrayList<>();
    private final List<FittingFacts> unplaced = new ArrayList<>();
    private final List<String> unplacedCovers = new ArrayList<>();

    private FireRule(Case seen) {
        this.seen = seen;
    }

    /** How far a lamp is from a thing, and how far it must be. */
    private record Gap(String tag, String thing, double metres, double leastMetres) {
        double lacking() {
            return leastMetres - metres;
        }
    }

    static Checked of(Case seen) {
        return new FireRule(seen).checked();
    }

    private Checked checked() {
        List<FittingFacts> fittings = seen.scene().rig().rig().fittings();
        if (fittings.isEmpty()) {
            return Checked.holds(TradeCheck.FIRE, "no-lamp");
        }
        fittings.forEach(this::look);
        Optional<Gap> worst = gaps.stream().max(Comparator.comparingDouble(Gap::lacking));
        Optional<Gap> lacking = worst.filter(gap -> gap.lacking() > SLACK_METRES);
        if (lacking.isPresent()) {
            return said(Outcome.FAILS, "close", lacking.get());
        }
        if (!unplaced.isEmpty()) {
            return Checked.unknown(TradeCheck.FIRE, "no-place", Case.tags(unplaced));
        }
        if (!unplacedCovers.isEmpty()) {
            return Checked.unknown(TradeCheck.FIRE, "no-height", String.join(", ", unplacedCovers));
        }
        return worst.map(gap -> said(Outcome.HOLDS, "far", gap))
                .orElseGet(() -> Checked.holds(TradeCheck.FIRE, "nothing"));
    }

    private Checked said(Outcome outcome, String what, Gap gap) {
        List<String> words =
                List.of(gap.tag(), gap.thing(), seen.centimetres(gap.metres()), seen.centimetres(gap.leastMetres()));
        return new Checked(TradeCheck.FIRE, outcome, what, words, Optional.of(gap.metres()));
    }

    private void look(FittingFacts fitting) {
        Optional<LampBody> body = LampBody.of(fitting);
        if (body.isEmpty()) {
            unplaced.add(fitting);
            return;
        }
        FireDistance asked = FireDistance.of(fitting.lamp().model().lampClass());
        String tag = fitting.lamp().tag();
        seen.scene().rig().rig().furniture().stream()
                .map(FurnitureFacts::furniture)
                .forEach(item -> gaps.add(
                        new Gap(tag, item.name(), body.get().distance(item.shape()), asked.furnitureMetres())));
        asked.coverMetres()
                .ifPresent(least -> seen.scene().rig().rig().covers().stream()
                        .map(CoverFacts::cover)
                        .forEach(cover -> look(tag, body.get(), cover, least)));
    }

    private void look(String tag, LampBody body, Cover cover, double least) {
        cover.heightMetres()
                .ifPresentOrElse(
                        height -> gaps.add(new Gap(tag, cover.name(), body.distance(cover, height), least)),
                        () -> unplacedCovers.add(cover.name()));
    }
}
