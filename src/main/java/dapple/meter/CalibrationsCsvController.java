package dapple.meter;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The calibrations of a meter as a file, newest first: a row for each range of the display. */
@Controller
@Allowed(Action.SEE_STOCK)
class CalibrationsCsvController {
    private final MeterRegister meters;
    private final Calibrations calibrations;
    private final People people;
    private final CsvSheets sheets;

    CalibrationsCsvController(MeterRegister meters, Calibrations calibrations, People people, CsvSheets sheets) {
        this.meters = meters;
        this.calibrations = calibrations;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/meters/{meterId}.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        MeterFacts meter = meters.get(me.siteId(), meterId).facts();
        return sheets.of(
                me.site(),
                "calibrations-" + meter.code(),
                columns(meter, people.names(me.siteId())),
                calibrations.of(me.siteId(), meterId).stream().flatMap(Row::of).toList());
    }

    private static CsvColumns<Row> columns(MeterFacts meter, Map<Long, String> names) {
        return CsvColumns.<Row>none()
                .with("meter", row -> meter.code())
                .word("quantity", "quantity.", row -> meter.quantity())
                .with("unit", row -> meter.quantity().unit())
                .with("calibrated-at", row -> row.calibration().calibratedAt())
                .with("display-from", Row::from)
                .with("display-to", Row::to)
                .with("factor", row -> row.range().factor())
                .with("calibration-due", row -> row.calibration().dueOn())
                .with("certificate", row -> row.calibration().certificate())
                .with("recorded-at", row -> row.calibration().recordedAt())
                .with(
                        "recorded-by",
                        row -> Optional.ofNullable(names.get(row.calibration().recordedBy())))
                .with("withdrawn-at", row -> row.calibration().withdrawal().map(Withdrawal::at))
                .with(
                        "withdrawn-by",
                        row -> row.calibration().withdrawal().map(gone -> names.getOrDefault(gone.personId(), "")))
                .with("withdrawn-because", row -> row.calibration().withdrawal().map(Withdrawal::reason));
    }

    private record Row(CalibrationDetails calibration, int place) {
        static Stream<Row> of(CalibrationDetails calibration) {
            return IntStream.range(0, calibration.factors().ranges().size())
                    .mapToObj(place -> new Row(calibration, place));
        }

        RangeFactor range() {
            return calibration.factors().ranges().get(place);
        }

        Optional<Double> from() {
            return limited(calibration.factors().beginOf(place));
        }

        Optional<Double> to() {
            return limited(range().upTo());
        }

        /** One factor for all amounts has no ends. */
        private static Optional<Double> limited(double end) {
            return Optional.of(end).filter(Double::isFinite);
        }
    }
}
