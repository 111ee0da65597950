package dapple.meter;

/** The lowest and the highest amount that a meter shows, in the unit of its quantity. */
public record MeterRange(double low, double high) {
    public MeterRange {
        if (!(low < high)) {
            throw new IllegalArgumentException("a range must rise, was " + low + " to " + high);
        }
    }

    public boolean includes(double displayed) {
        return displayed >= low && displayed <= high;
    }
}
