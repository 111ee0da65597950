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
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's invented meters: one is borrowed and has a factor for each range, and one is past due. */
@Component
@Profile("demo")
class DemoMeters {
    private final MeterRegister register;
    private final Meters meters;

    DemoMeters(MeterRegister register, Meters meters) {
        this.register = register;
        this.meters = meters;
    }

    /** Enters the meters, which have all been calibrated by now; gives them by their codes. */
    Map<String, MeterFacts> register(DemoTeam.Members members, Instant now) {
        ReferenceTable.rows("demo/meters.csv", Row::of).forEach(row -> enter(members, row, now));
        return meters.inUse(members.siteId()).stream().collect(Collectors.toMap(MeterFacts::code, Function.identity()));
    }

    private void enter(DemoTeam.Members members, Row row, Instant now) {
        LocalDate today = LocalDate.ofInstant(now, ZoneOffset.UTC);
        Optional<Loan> loan = row.lender()
                .map(lender -> new Loan(lender, row.borrowedForDays().map(today::plusDays)));
        MeterChange state = new MeterChange(
                row.code(), row.description(), row.resolution(), row.range(), Optional.empty(), loan, "");
        long meter = register.add(members.siteId(), row.quantity(), state);
        NewCalibration calibration = new NewCalibration(
                now.minus(Duration.ofDays(row.calibratedDaysAgo())),
                row.factors(),
                today.plusDays(row.dueInDays()),
                row.certificate());
        meters.calibrate(members.siteId(), meter, calibration, members.supervisor());
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
