package dapple.site;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.io.Serializable;
import java.time.Duration;
import java.time.Period;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a site has settled where no source does; every usual value is common practice, no source, unless said.
 *
 * @param overdueAfterDays age of a reading from which the next is overdue, days
 * @param staleAfterDays age from which a reading says nothing of today, days, at least overdueAfterDays
 * @param weakAfterDays how long too weak is borne before it is urgent, days
 * @param weakAfterDaysInZone1 the same in UV zone 1, days
 * @param warmUpMinutes from switching on until a lamp may be read, min
 * @param lowestRatio lowest ratio of reading to prediction that needs no notice
 * @param highestRatio highest ratio of reading to prediction that needs no notice
 * @param carryDays longest time between two readings that the days between them are estimated from, days
 * @param baskingHours hours a day that an animal is taken to spend at the basking place; an assumption of ours
 * @param onePerson whether one person alone reads and reviews
 * @param keepsDoses whether what light fell on who read meters is kept by person
 * @param repeatsAsked where three readings one after the other are asked for
 * @param blindRepeats whether one reading in ten is read again by somebody else
 * @param namesKeptMonths how long the names of people who left are kept, months; null: for ever; a usual value of ours
 */
@Embeddable
public record Settings(
        int overdueAfterDays,
        int staleAfterDays,
        int weakAfterDays,
        @Column(name = "weak_after_days_in_zone_1") int weakAfterDaysInZone1,
        int warmUpMinutes,
        double lowestRatio,
        double highestRatio,
        int carryDays,
        double baskingHours,
        boolean onePerson,
        boolean keepsDoses,
        @Enumerated(EnumType.STRING) RepeatsAsked repeatsAsked,
        boolean blindRepeats,
        @Nullable Integer namesKeptMonths)
        implements Serializable {

    public static final Settings USUAL =
            new Settings(9, 21, 14, 28, 30, 0.8, 1.25, 14, 3, false, false, RepeatsAsked.NOWHERE, false, 24);

    /** The same where one person alone reads and reviews. */
    public Settings withOnePerson() {
        return with(true, repeatsAsked, blindRepeats);
    }

    public Settings withRepeatsAsked(RepeatsAsked where) {
        return with(onePerson, where, blindRepeats);
    }

    public Settings withBlindRepeats() {
        return with(onePerson, repeatsAsked, true);
    }

    private Settings with(boolean alone, RepeatsAsked where, boolean blind) {
        return new Settings(
                overdueAfterDays,
                staleAfterDays,
                weakAfterDays,
                weakAfterDaysInZone1,
                warmUpMinutes,
                lowestRatio,
                highestRatio,
                carryDays,
                baskingHours,
                alone,
                keepsDoses,
                where,
                blind,
                namesKeptMonths);
    }

    /** Whether a reading over its prediction needs a notice. */
    public boolean isDoubtful(double ratio) {
        return !(ratio >= lowestRatio && ratio <= highestRatio);
    }

    /** How long the names of people who left are kept; empty: for ever. */
    public Optional<Period> namesKept() {
        return Optional.ofNullable(namesKeptMonths).map(Period::ofMonths);
    }

    public Duration overdueAfter() {
        return Duration.ofDays(overdueAfterDays);
    }

    public Duration staleAfter() {
        return Duration.ofDays(staleAfterDays);
    }

    public Duration warmUp() {
        return Duration.ofMinutes(warmUpMinutes);
    }
}
