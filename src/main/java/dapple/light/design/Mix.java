package dapple.light.design;

import java.util.Arrays;

/** Some candidates under one way to lay the covers. */
final class Mix implements Comparable<Mix> {
    private final int layering;
    private final int[] lamps;

    private Mix(int layering, int[] lamps) {
        this.layering = layering;
        this.lamps = lamps;
    }

    static Mix of(int layering, int[] lamps, int size) {
        int[] sorted = Arrays.copyOf(lamps, size);
        Arrays.sort(sorted);
        return new Mix(layering, sorted);
    }

    int layering() {
        return layering;
    }

    int size() {
        return lamps.length;
    }

    int[] lamps() {
        return lamps;
    }

    @Override
    public int compareTo(Mix other) {
        int byLayering = Integer.compare(layering, other.layering);
        return byLayering != 0 ? byLayering : Arrays.compare(lamps, other.lamps);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mix mix && compareTo(mix) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * layering + Arrays.hashCode(lamps);
    }
}
