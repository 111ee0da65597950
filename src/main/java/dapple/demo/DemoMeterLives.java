package dapple.demo;

import static dapple.demo.DemoRows.number;

import dapple.site.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/** How the demo's meters drifted from one calibration to the next, and what the calibrations before the newest found. */
record DemoMeterLives(List<Term> terms, Instant now) {
    static DemoMeterLives read(Instant now) {
        return new DemoMeterLives(ReferenceTable.rows("demo/calibrations.csv", Term::of), now);
    }

    /** What a meter shows over what there is; 1 of one of which the table says nothing. */
    double shows(String meter, Instant at) {
        return terms.stream()
                .filter(term -> term.meter().equals(meter) && !term.from(now).isAfter(at))
                .min(Comparator.comparingInt(Term::daysAgo))
                .map(term -> term.shows(now, at))
                .orElse(1.0);
    }

    /** Those of a meter that came before its newest one, in time, oldest first. */
    List<Term> before(String meter) {
        return terms.stream()
                .filter(term -> term.meter().equals(meter) && term.untilDaysAgo() > 0 && !term.isLate())
                .sorted(Comparator.comparingInt(Term::daysAgo).reversed())
                .toList();
    }

    /**
     * From one calibration of a meter to the next.
     *
     * @param daysAgo from when its factor holds
     * @param untilDaysAgo of the next one
     * @param recordedDaysAgo when it became known
     * @param factor as the certificate says
     * @param showsFirst what the meter shows over what there is, at its beginning
     * @param showsLast the same at its end
     */
    record Term(
            String meter,
            int daysAgo,
            int untilDaysAgo,
            int recordedDaysAgo,
            double factor,
            double showsFirst,
            double showsLast,
            String certificate) {
        static Term of(NamedCsvRecord row) {
            return new Term(
                    row.getField("meter"),
                    Integer.parseInt(row.getField("days_ago")),
                    Integer.parseInt(row.getField("until_days_ago")),
                    Integer.parseInt(row.getField("recorded_days_ago")),
                    number(row, "factor"),
                    number(row, "shows_first"),
                    number(row, "shows_last"),
                    row.getField("certificate"));
        }

        /** Whether readings had been judged without it before. */
        boolean isLate() {
            return recordedDaysAgo < daysAgo;
        }

        Instant from(Instant now) {
            return now.minus(Duration.ofDays(daysAgo));
        }

        Instant recorded(Instant now) {
            return now.minus(Duration.ofDays(recordedDaysAgo));
        }

        private double shows(Instant now, Instant at) {
            double gone = Duration.between(from(now), at).toHours()
                    / (double) Duration.ofDays(daysAgo - untilDaysAgo).toHours();
            return showsFirst + Math.min(1, gone) * (showsLast - showsFirst);
        }
    }
}
