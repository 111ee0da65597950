package dapple.drawing;

/** A strip for the desk and paper, and one for the phone: other drawings of the same, not one scaled. */
public enum StripSize {
    LONG(1200, 26),
    SHORT(358, 13);

    private static final double LEFT = 60;
    private static final double RIGHT_MARGIN = 46;
    private static final double DISC_PITCH = 11.5;
    private static final double NARROWEST_WORDS_OF_A_GAP = 82;

    private final double width;
    private final int weeks;

    StripSize(double width, int weeks) {
        this.width = width;
        this.weeks = weeks;
    }

    public double width() {
        return width;
    }

    /** How many weeks of readings are drawn. */
    public int weeks() {
        return weeks;
    }

    double left() {
        return LEFT;
    }

    double right() {
        return width - RIGHT_MARGIN;
    }

    /** Where words must end. */
    double edge() {
        return width - 2;
    }

    /** In so many steps of time at most two readings are drawn each. */
    int bins() {
        return (int) ((right() - left()) / DISC_PITCH);
    }

    /** Whether the words of a gap have room, or only their sign. */
    boolean hasRoomForWords(double gapWidth) {
        return gapWidth >= NARROWEST_WORDS_OF_A_GAP;
    }
}
