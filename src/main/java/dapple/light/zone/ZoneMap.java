package dapple.light.zone;

import java.util.BitSet;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;

/** The zone of every reachable place of a lattice. */
public final class ZoneMap {
    private final Space space;
    private final Map<Zone, BitSet> places = new EnumMap<>(Zone.class);
    private int brightest = -1;

    private ZoneMap(Space space) {
        this.space = space;
        for (Zone zone : Zone.values()) {
            places.put(zone, new BitSet(space.lattice().size()));
        }
    }

    /**
     * Sorts every reachable place into its zone.
     *
     * @param amounts by index the largest irradiance on any plane, of all lamps together; asked at reachable places alone
     */
    public static ZoneMap of(Space space, IntToDoubleFunction amounts, ZoneTarget target) {
        ZoneMap map = new ZoneMap(space);
        double most = -1;
        for (int index = 0; index < space.lattice().size(); index++) {
            if (space.isReachable(index)) {
                double amount = amounts.applyAsDouble(index);
                map.in(target.of(amount)).set(index);
                if (amount > most) {
                    most = amount;
                    map.brightest = index;
                }
            }
        }
        return map;
    }

    /** The indices of the places in a zone; not to be changed. */
    BitSet in(Zone zone) {
        return Objects.requireNonNull(places.get(zone));
    }

    public Space space() {
        return space;
    }

    public boolean is(Zone zone, int index) {
        return in(zone).get(index);
    }

    /** How many places are reachable. */
    public int reachable() {
        return places.values().stream().mapToInt(BitSet::cardinality).sum();
    }

    /** The share of each zone among the reachable places; empty where there are none. */
    public Map<Zone, Double> shares() {
        Map<Zone, Double> shares = new EnumMap<>(Zone.class);
        int all = reachable();
        if (all > 0) {
            places.forEach((zone, found) -> shares.put(zone, (double) found.cardinality() / all));
        }
        return shares;
    }

    /** The reachable place that has most; the first of several, none where nothing is reachable. */
    public OptionalInt brightest() {
        return brightest < 0 ? OptionalInt.empty() : OptionalInt.of(brightest);
    }
}
