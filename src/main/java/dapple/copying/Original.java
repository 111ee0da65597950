package dapple.copying;

import dapple.draft.DraftRig;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.PointFacts;
import dapple.rig.Rig;
import dapple.site.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An enclosure that is to be built again, as it is now.
 *
 * @param lastChange the change of its rig that was recorded last; 0 for none
 */
public record Original(EnclosureFacts enclosure, List<PointFacts> points, Rig rig, long lastChange) {
    public Original {
        points = List.copyOf(points);
    }

    /** Something short that differs when anything that is copied does. */
    public String mark() {
        String all = points.stream().map(Original::text).collect(Collectors.joining("\n", enclosure + "\n", ""));
        return lastChange + "-" + Integer.toHexString(all.hashCode());
    }

    private static String text(PointFacts point) {
        return String.join(
                "\t",
                point.code(),
                point.place(),
                point.role().name(),
                point.facing().name(),
                point.position().toString(),
                point.quantities().toString(),
                new TreeSet<>(point.served().speciesIds()).toString());
    }

    /** Whether lamps hang there, so that copies need their own. */
    public boolean hasLamps() {
        return !rig.fittings().isEmpty();
    }

    /** Whether a draft holds as many parts. */
    boolean fitsADraft() {
        return Stream.of(rig.fittings(), rig.covers(), rig.furniture())
                .allMatch(parts -> parts.size() <= DraftRig.MOST);
    }

    /** Of all its lamps; whoever hangs them works at the mains, beside hot lamps, under ultraviolet. */
    public Set<Caution> cautions() {
        Set<Caution> cautions = EnumSet.of(Caution.MAINS, Caution.HEAT, Caution.ULTRAVIOLET, Caution.FIRST_LIGHT);
        rig.fittings().forEach(fitting -> cautions.addAll(fitting.lamp().model().cautions()));
        return cautions;
    }
}
