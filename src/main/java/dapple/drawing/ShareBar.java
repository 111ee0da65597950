package dapple.drawing;

import dapple.light.quantity.Interval;
import dapple.light.zone.Zone;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The shares of the zones as one bar, 640 units wide, with what each part means in words. Like on the map, shade and over
 * the ceiling carry a pattern, and basking lies between two lines.
 */
public record ShareBar(List<Part> parts) {
    private static final double WIDTH = 640;

    /** Below a half of a percent a share is not none. */
    private static final double LEAST = 0.005;

    public ShareBar {
        parts = List.copyOf(parts);
    }

    /**
     * One zone.
     *
     * @param x where its part of the bar begins
     * @param within what the share may be; empty where that is not known
     */
    public record Part(Zone zone, double x, double width, double share, Optional<Interval> within) {
        /** The tone on the map that stands for the zone. */
        public int tone() {
            return switch (zone) {
                case OVER_CEILING -> 14;
                case ABOVE_TARGET -> 13;
                case BASKING -> 11;
                case GRADIENT -> 7;
                case SHADE -> 2;
            };
        }

        public String percent() {
            return percent(share);
        }

        public String low() {
            return percent(within.map(Interval::low).orElse(share));
        }

        public String high() {
            return percent(within.map(Interval::high).orElse(share));
        }

        /** Whether the interval says more than the share. */
        public boolean isUncertain() {
            return within.isPresent() && !(low().equals(percent()) && high().equals(percent()));
        }

        /** In whole percent, without rounding something to nothing or most to all. */
        private static String percent(double share) {
            if (share > 0 && share < LEAST) {
                return "under 1";
            }
            return share < 1 && share > 1 - LEAST ? "over 99" : String.format(Locale.ROOT, "%.0f", 100 * share);
        }
    }

    /**
     * A bar from over the ceiling to shade.
     *
     * @param shares of every zone, 1 together; none where nothing is reachable
     * @param within what each may be; may be empty
     */
    public static ShareBar of(Map<Zone, Double> shares, Map<Zone, Interval> within) {
        List<Part> parts = new ArrayList<>();
        double x = 0;
        for (Zone zone : Zone.values()) {
            double share = shares.getOrDefault(zone, 0.0);
            if (shares.containsKey(zone)) {
                parts.add(new Part(zone, x, share * WIDTH, share, Optional.ofNullable(within.get(zone))));
            }
            x += share * WIDTH;
        }
        return new ShareBar(parts);
    }
}
