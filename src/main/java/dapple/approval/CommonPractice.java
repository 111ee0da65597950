package dapple.approval;

import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;

/** Limits of the UV index that practice derives from the basking range; no source gives them. */
final class CommonPractice {
    /** The most that any reachable point should have, UV index: common practice, no source. */
    private static final double CAP_UVI = 8;

    /** Ceiling per basking high, so that too strong means adjust and over the ceiling means act now: as above. */
    private static final double CEILING_PER_HIGH = 1.25;

    /** Shade limit per basking low, and the least that is asked of shade, UV index: as above. */
    private static final double SHADE_PER_LOW = 0.1;

    private static final double LEAST_SHADE_UVI = 0.1;

    private CommonPractice() {}

    /** The smaller of 8 and 1.25 times the basking high, by the sunbeam method. */
    static SourcedLimit ceiling(double baskingHighUvi) {
        return limit(
                LimitPlace.CEILING,
                Math.min(CAP_UVI, CEILING_PER_HIGH * baskingHighUvi),
                "the smaller of 8 and 1.25 times the basking high");
    }

    /** The larger of 0.1 and a tenth of the basking low. */
    static SourcedLimit shade(double baskingLowUvi) {
        return limit(
                LimitPlace.SHADE,
                Math.max(LEAST_SHADE_UVI, SHADE_PER_LOW * baskingLowUvi),
                "the larger of 0.1 and a tenth of the basking low");
    }

    private static SourcedLimit limit(LimitPlace place, double highUvi, String source) {
        double printed = Math.rint(highUvi * 100) / 100;
        return new SourcedLimit(Quantity.UV_INDEX, place, Band.atMost(printed), SourceMark.COMMON_PRACTICE, source);
    }
}
