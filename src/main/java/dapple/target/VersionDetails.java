package dapple.target;

import dapple.site.SourceMark;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;

/** A version of a target with who approved it and why. */
public record VersionDetails(Target target, Optional<Photoperiod> photoperiod, long approvedBy, String reason) {
    /** The mark of the cell that is known least. */
    public SourceMark weakestMark() {
        return target.sourcedLimits().stream()
                .map(SourcedLimit::mark)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Whether this is what was asked for: a form that is sent twice makes one version. */
    public boolean is(Approval asked) {
        return approvedBy == asked.personId() && reason.equals(asked.reason()) && says(asked);
    }

    private boolean says(Approval asked) {
        return target.zone().equals(asked.zone())
                && target.isForEarlierReadings() == asked.isForEarlierReadings()
                && photoperiod.equals(asked.photoperiod())
                && new HashSet<>(target.sourcedLimits()).equals(new HashSet<>(asked.limits()));
    }
}
