package dapple.light.calibration;

import dapple.light.quantity.Check;
import java.util.List;

/**
 * One quantity of an enclosure as it is stated, and as it was read.
 *
 * @param lamps in the order of the readings' lights
 * @param covers in the order of the readings' passages
 * @param readings 1 to 1000
 */
public record RigTask(List<Stated> lamps, List<Stated> covers, List<RigReading> readings) {
    private static final int MOST = 1000;

    public RigTask {
        lamps = List.copyOf(lamps);
        covers = List.copyOf(covers);
        readings = List.copyOf(readings);
        if (lamps.isEmpty() || readings.isEmpty() || readings.size() > MOST) {
            throw new IllegalArgumentException("a task needs a lamp and 1 to " + MOST + " readings");
        }
        for (RigReading reading : readings) {
            requireOf(reading.seen(), lamps.size(), covers.size());
        }
    }

    private static void requireOf(SeenLight seen, int lamps, int covers) {
        if (seen.byLamp().size() != lamps || seen.through().stream().anyMatch(row -> row.size() != covers)) {
            throw new IllegalArgumentException("a reading must say of every lamp what comes through every cover");
        }
    }

    /** The meters, each once, in the order in which they first read. */
    List<RigReading.ByMeter> meters() {
        return readings.stream().map(RigReading::meter).distinct().toList();
    }

    /**
     * A lamp or a cover.
     *
     * @param relative standard uncertainty of what is stated of it, over it, above 0, to 2
     */
    public record Stated(String name, double relative) {
        public Stated {
            Check.within("uncertainty of what is stated", relative, Double.MIN_NORMAL, 2, "");
        }
    }
}
