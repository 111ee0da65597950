package dapple.practice;

import dapple.practice.MeterNotice.Kind;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * A change of a meter that its readings tell, and nobody has settled.
 *
 * @param lnNow natural logarithm of the factor by which it reads other than before; below 0 it reads less
 * @param isSure whether no other meter and no lamps explain the readings as well
 */
record SeemsChanged(Instant since, double lnNow, boolean isSure) {
    private static final double PERCENT = 100;

    MeterNotice notice(ZoneId zone) {
        int percent = Math.toIntExact(Math.round(PERCENT * Math.abs(Math.expm1(lnNow))));
        return new MeterNotice(kind(), Optional.of(LocalDate.ofInstant(since, zone)), Optional.of(percent));
    }

    private Kind kind() {
        return lnNow < 0
                ? (isSure ? Kind.READS_LOW : Kind.MAY_READ_LOW)
                : (isSure ? Kind.READS_HIGH : Kind.MAY_READ_HIGH);
    }
}
