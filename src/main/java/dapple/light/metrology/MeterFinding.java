package dapple.light.metrology;

import dapple.light.quantity.Interval;
import java.time.Instant;

/** What the readings say of one meter, against the others and against the lamps. */
public sealed interface MeterFinding {
    String meter();

    /**
     * No change was found.
     *
     * @param lnPerYear drift of ln gain that the readings leave possible, 95 %
     */
    record Steady(String meter, Interval lnPerYear) implements MeterFinding {}

    /**
     * Its gain has drifted ever since its first reading.
     *
     * @param found when that became certain enough
     * @param drift ln per year; below 0 the meter reads ever less
     */
    record Drifting(String meter, Instant found, Change drift, Doubt doubt) implements MeterFinding {}

    /**
     * Its gain has stepped.
     *
     * @param found when that became certain enough
     * @param weekFrom beginning of the likeliest week
     * @param shift ln; below 0 the meter reads less than before
     */
    record Knocked(String meter, Instant found, Instant weekFrom, Change shift, Doubt doubt) implements MeterFinding {}

    /** The readings do not tell. */
    record Unknown(String meter, Why why) implements MeterFinding {}

    /** Why nothing can be told. */
    enum Why {
        /** Too few weeks or enclosures. */
        TOO_FEW_READINGS,
        /** A knock would have shown; a drift cannot be told from lamps that age: read a reference lamp or by a second meter. */
        NEEDS_REFERENCE
    }
}
