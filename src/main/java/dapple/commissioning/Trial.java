package dapple.commissioning;

import dapple.light.calibration.FittedRig.Doubt;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.rig.RigChangeFacts;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A rig held against what was read under it.
 *
 * @param change that made it
 * @param plan the points that can tell of it
 * @param untold lamps that no reading at these points would tell apart
 * @param uncounted how many readings since the change tell nothing: a lamp was cold or off then
 * @param accepted empty until somebody has
 */
public record Trial(
        EnclosureScene scene,
        RigChangeFacts change,
        List<PlannedPoint> plan,
        List<Untold> untold,
        List<Taken> taken,
        int uncounted,
        List<FittedQuantity> fits,
        Optional<CommissioningFacts> accepted) {
    public Trial {
        plan = List.copyOf(plan);
        untold = List.copyOf(untold);
        taken = List.copyOf(taken);
        fits = List.copyOf(fits);
    }

    public Outcome outcome() {
        if (accepted.isPresent()) {
            return Outcome.ACCEPTED;
        }
        if (fits.isEmpty()) {
            return Outcome.UNREAD;
        }
        if (!fits.stream().allMatch(FittedQuantity::agrees)) {
            return Outcome.DISAGREES;
        }
        return wanted().stream().anyMatch(PlannedPoint::isRead) ? Outcome.AGREES : Outcome.UNSEEN;
    }

    public List<PlannedPoint> wanted() {
        return plan.stream().filter(PlannedPoint::isWanted).toList();
    }

    public long wantedRead() {
        return wanted().stream().filter(PlannedPoint::isRead).count();
    }

    /** What disagrees most, of any quantity. */
    public Optional<DoubtOf> worst() {
        return fits.stream()
                .flatMap(fit -> fit.doubts().stream().map(doubt -> new DoubtOf(fit.quantity(), doubt)))
                .reduce((one, other) -> other.size() > one.size() ? other : one);
    }

    /** A doubt, and of which quantity. */
    public record DoubtOf(Quantity quantity, Doubt doubt) {
        double size() {
            return doubt.size();
        }
    }

    /** Whether any reading that counts is over a ceiling, as it was judged or of who lives there now. */
    public boolean isHarmful() {
        return taken.stream().anyMatch(one -> Counting.isHarm(one.reading()) || isOverACeiling(one));
    }

    private boolean isOverACeiling(Taken one) {
        return one.point().role() != PointRole.KEEPER
                && scene.needs().stream()
                        .flatMap(need -> need.limits(one.quantity()).stream())
                        .anyMatch(limits -> limits.hasCeiling() && one.reading().amount() >= limits.ceiling());
    }

    /** Whether a lamp hangs there that has radiation shorter than the sun's. */
    public boolean isFaulty() {
        return scene.rig().rig().fittings().stream()
                .anyMatch(fitting -> fitting.lamp().model().hasShortWaves());
    }

    /** What was judged not to be on target: that model and meter agree does not make it right. */
    public List<Taken> offTarget() {
        return taken.stream()
                .filter(one -> one.reading()
                        .state()
                        .filter(state -> state != State.ON_TARGET)
                        .isPresent())
                .toList();
    }

    boolean isReadBy(long personId) {
        return taken.stream().allMatch(one -> one.reading().personId() == personId);
    }

    /** Names what somebody has looked at: the change and the readings. */
    public String seen() {
        return change.id() + ":"
                + taken.stream()
                        .map(one -> one.reading().readingId())
                        .sorted()
                        .map(String::valueOf)
                        .collect(Collectors.joining("."));
    }
}
