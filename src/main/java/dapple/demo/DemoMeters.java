package dapple.demo;

import static dapple.demo.DemoRows.given;
import static dapple.demo.DemoRows.number;

import dapple.light.quantity.Quantity;
import dapple.meter.CalibrationFactors;
import dapple.meter.Loan;
import dapple.meter.MeterChange;
import dapple.meter.MeterFacts;
import dapple.meter.MeterRange;
import dapple.meter.MeterRegister;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.meter.RangeFactor;
import dapple.site.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's invented meters: one is borrowed and has a factor for each range, and one is past due. */
@Component
@Profile("demo")
class DemoMeters {
    private static final Duration BEFORE_THE_FIRST = Duration.ofDays(830);

    private final MeterRegister register;
    private final Meters meters;

    DemoMeters(MeterRegister register, Meters meters) {
        this.register = register;
        this.meters = meters;
    }

    /** Enters the meters with what was known of them in time; gives them by their codes. */
    Map<String, MeterFacts> register(DemoTeam.Members members, DemoMeterLives lives, Consumer<Instant> time) {
        ReferenceTable.rows("demo/meters.csv", Row::of).forEach(row -> enter(members, row, lives, time));
        return meters.inUse(members.siteId()).stream().collect(Collectors.toMap(MeterFacts::code, Function.identity()));
    }

    /** Enters a calibration that an earlier one should have been: what was read since is judged anew. */
    void calibrateLate(DemoStory story, DemoMeterLives lives, Consumer<Instant> time) {
        lives.terms().stream().filter(DemoMeterLives.Term::isLate).forEach(term -> {
            time.accept(term.recorded(story.now()));
            calibrate(story.members(), story.meter(term.meter()).id(), term, story.now());
        });
    }

    private void enter(DemoTeam.Members members, Row row, DemoMeterLives lives, Consumer<Instant> time) {
        Instant now = lives.now();
        time.accept(now.minus(BEFORE_THE_FIRST));
        LocalDate today = LocalDate.ofInstant(now, ZoneOffset.UTC);
        Optional<Loan> loan = row.lender()
                .map(lender -> new Loan(lender, row.borrowedForDays().map(today::plusDays)));
        MeterChange state = new MeterChange(
                row.code(), row.description(), row.resolution(), row.range(), Optional.empty(), loan, "");
        long meter = register.add(members.siteId(), row.quantity(), state);
        lives.before(row.code()).forEach(term -> {
            time.accept(term.recorded(now));
            calibrate(members, meter, term, now);
        });
        time.accept(now.minus(Duration.ofDays(row.calibratedDaysAgo())));
        NewCalibration calibration = new NewCalibration(
                now.minus(Duration.ofDays(row.calibratedDaysAgo())),
                row.factors(),
                today.plusDays(row.dueInDays()),
                row.certificate());
        meters.calibrate(members.siteId(), meter, calibration, members.supervisor());
    }

    private void calibrate(DemoTeam.Members members, long meter, DemoMeterLives.Term term, Instant now) {
        LocalDate due = LocalDate.ofInstant(term.from(now), ZoneOffset.UTC).plusYears(1);
        meters.calibrate(
                members.siteId(),
                meter,
                new NewCalibration(term.from(now), term.factor(), due, term.certificate()),
                members.supervisor());
    }

    private record Row(
            String code,
            String description,
            Quantity quantity,
            double resolution,
            double factor,
            int calibratedDaysAgo,
            int dueInDays,
            String certificate,
            Optional<String> lender,
            Optional<Integer> borrowedForDays,
            String ranges,
            Optional<MeterRange> range) {
        static Row of(NamedCsvRecord row) {
            return new Row(
                    row.getField("code"),
                    row.getField("description"),
                    Quantity.valueOf(row.getField("quantity")),
                    number(row, "resolution"),
                    number(row, "factor"),
                    Integer.parseInt(row.getField("calibrated_days_ago")),
                    Integer.parseInt(row.getField("due_in_days")),
                    row.getField("certificate"),
                    given(row, "lender"),
                    given(row, "borrowed_for_days").map(Integer::valueOf),
                    row.getField("ranges"),
                    given(row, "highest").map(Double::valueOf).map(highest -> new MeterRange(0, highest)));
        }

        /** One for all amounts, or by ranges from 0 on, such as 2:1.05 12:1.08. */
        CalibrationFactors factors() {
            return ranges.isEmpty()
                    ? CalibrationFactors.of(factor)
                    : new CalibrationFactors(
                            0,
                            Arrays.stream(ranges.split(" "))
                                    .map(range -> range.split(":"))
                                    .map(range ->
                                            new RangeFactor(Double.parseDouble(range[0]), Double.parseDouble(range[1])))
                                    .toList());
        }
    }
}
