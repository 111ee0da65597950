package dapple.light.zone;

import java.util.BitSet;

/** The connected parts of a flat region, by neighbours along u and v. */
final class Parts {
    private final Sheet sheet;
    private final BitSet left;

    /** One part after the other. */
    private final int[] queue;

    private int end;

    private Parts(Sheet sheet, BitSet region) {
        this.sheet = sheet;
        this.left = (BitSet) region.clone();
        this.queue = new int[region.cardinality()];
    }

    /** The part with the largest area, the first of several; empty if the region is. */
    static BitSet largest(Sheet sheet, BitSet region) {
        Parts parts = new Parts(sheet, region);
        BitSet largest = new BitSet();
        int from = 0;
        int to = 0;
        double most = 0;
        for (int start = region.nextSetBit(0); start >= 0; start = parts.left.nextSetBit(start)) {
            int begin = parts.end;
            double area = parts.follow(start);
            if (area > most) {
                most = area;
                from = begin;
                to = parts.end;
            }
        }
        for (int at = from; at < to; at++) {
            largest.set(parts.queue[at]);
        }
        return largest;
    }

    /** Queues all that is connected with a place, breadth first; gives its area. */
    private double follow(int start) {
        int next = end;
        double area = 0;
        take(start);
        while (next < end) {
            int at = queue[next++];
            int u = sheet.u(at);
            area += sheet.area(at);
            if (u > 0) {
                take(at - 1);
            }
            if (u < sheet.countU() - 1) {
                take(at + 1);
            }
            if (at >= sheet.countU()) {
                take(at - sheet.countU());
            }
            take(at + sheet.countU());
        }
        return area;
    }

    private void take(int index) {
        if (left.get(index)) {
            left.clear(index);
            queue[end++] = index;
        }
    }
}
