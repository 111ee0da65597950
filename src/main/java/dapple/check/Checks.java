package dapple.check;

import dapple.site.Caution;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** All checks of one rig, the gravest first. */
public record Checks(List<Checked> all) {
    public Checks {
        all = all.stream().sorted(Checked.GRAVEST_FIRST).toList();
    }

    public List<Checked> of(Outcome outcome) {
        return all.stream().filter(one -> one.outcome() == outcome).toList();
    }

    public Checked of(TradeCheck check) {
        return all.stream().filter(one -> one.check() == check).findFirst().orElseThrow();
    }

    public long count(Outcome outcome) {
        return of(outcome).size();
    }

    /** Of all that do not hold, or of which it cannot be said; each once. */
    public Set<Caution> cautions() {
        return all.stream()
                .filter(one -> one.outcome() != Outcome.HOLDS)
                .flatMap(one -> one.check().cautions().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
