package dapple.approval;

import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.LimitPlace;
import dapple.target.Photoperiod;
import dapple.target.SourcedLimit;
import dapple.target.VersionDetails;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a version would change against the one in force. */
public record TargetChanges(
        Optional<UvZone> zoneBefore,
        UvZone zone,
        List<CellChange> cells,
        Optional<Photoperiod> photoperiodBefore,
        Optional<Photoperiod> photoperiod) {

    static TargetChanges between(Optional<VersionDetails> before, Approval after) {
        return new TargetChanges(
                before.map(version -> version.target().zone()),
                after.zone(),
                cells(before.map(version -> version.target().sourcedLimits()).orElse(List.of()), after.limits()),
                before.flatMap(VersionDetails::photoperiod),
                after.photoperiod());
    }

    private static List<CellChange> cells(List<SourcedLimit> before, List<SourcedLimit> after) {
        List<CellChange> changed = new ArrayList<>();
        CellName.quantities().forEach(quantity -> {
            for (LimitPlace place : LimitPlace.values()) {
                CellName name = new CellName(quantity, place);
                Optional<SourcedLimit> was = find(before, name);
                Optional<SourcedLimit> is = find(after, name);
                if (!was.equals(is)) {
                    changed.add(new CellChange(quantity, place, was, is));
                }
            }
        });
        return changed;
    }

    private static Optional<SourcedLimit> find(List<SourcedLimit> limits, CellName name) {
        return limits.stream().filter(limit -> CellName.of(limit).equals(name)).findFirst();
    }

    public boolean isOfZone() {
        return !zoneBefore.equals(Optional.of(zone));
    }

    public boolean isOfPhotoperiod() {
        return !photoperiodBefore.equals(photoperiod);
    }

    public boolean isNothing() {
        return !isOfZone() && !isOfPhotoperiod() && cells.isEmpty();
    }

    /** Whether any cell of the UV index goes up; a first target goes up from none. */
    public boolean raisesUltraviolet() {
        return cells.stream().anyMatch(CellChange::raisesUltraviolet);
    }

    /** Tells one set of changes from another, so that nobody approves what was not shown. */
    String fingerprint() {
        return Integer.toHexString(toString().hashCode());
    }
}
