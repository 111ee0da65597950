package dapple.check;

import dapple.site.Caution;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a change does to the checks, the gravest first.
 *
 * @param changed those whose outcome becomes another
 * @param still those that did not hold and go on so, as they would be
 */
public record ChangedChecks(List<Change> changed, List<Checked> still) {
    public ChangedChecks {
        changed = List.copyOf(changed);
        still = List.copyOf(still);
    }

    /** One check before and after. */
    public record Change(Outcome before, Checked after) {}

    public static ChangedChecks between(Checks before, Checks after) {
        List<Change> changed = after.all().stream()
                .map(one -> new Change(before.of(one.check()).outcome(), one))
                .filter(change -> change.before() != change.after().outcome())
                .toList();
        List<Checked> still = after.of(Outcome.FAILS).stream()
                .filter(one -> before.of(one.check()).outcome() == Outcome.FAILS)
                .toList();
        return new ChangedChecks(changed, still);
    }

    /** Of what does not hold, or is no longer known to hold; each once. */
    public Set<Caution> cautions() {
        return Stream.concat(changed.stream().map(Change::after), still.stream())
                .filter(one -> one.outcome() != Outcome.HOLDS)
                .flatMap(one -> one.check().cautions().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
