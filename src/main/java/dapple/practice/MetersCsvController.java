package dapple.practice;

import dapple.meter.CalibrationDetails;
import dapple.meter.Calibrations;
import dapple.meter.MeterDetails;
import dapple.meter.MeterFacts;
import dapple.meter.MeterRange;
import dapple.meter.MeterRegister;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** The meters of a site as a file, each with the calibration that holds and with what is due. */
@Controller
@Allowed(Action.SEE_STOCK)
class MetersCsvController {
    private final MeterRegister meters;
    private final MeterStandings standings;
    private final Calibrations calibrations;
    private final CsvSheets sheets;

    MetersCsvController(MeterRegister meters, MeterStandings standings, Calibrations calibrations, CsvSheets sheets) {
        this.meters = meters;
        this.standings = standings;
        this.calibrations = calibrations;
        this.sheets = sheets;
    }

    @GetMapping("/meters.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        List<MeterDetails> all = meters.all(me.siteId());
        List<MeterFacts> inUse = all.stream()
                .filter(MeterDetails::isInUse)
                .map(MeterDetails::facts)
                .toList();
        Map<Long, List<PracticeDue.Kind>> due = standings.at(me.siteId(), me.zone()).due(inUse).stream()
                .collect(Collectors.groupingBy(
                        PracticeDue::meterId, Collectors.mapping(PracticeDue::kind, Collectors.toList())));
        return sheets.of(
                me.site(),
                "meters",
                columns(due),
                all.stream().map(meter -> new Row(meter, newest(me, meter))).toList());
    }

    /** The newest that nobody has withdrawn. */
    private Optional<CalibrationDetails> newest(SignedIn me, MeterDetails meter) {
        return calibrations.of(me.siteId(), meter.facts().id()).stream()
                .filter(one -> one.withdrawal().isEmpty())
                .findFirst();
    }

    private static CsvColumns<Row> columns(Map<Long, List<PracticeDue.Kind>> due) {
        return CsvColumns.<Row>none()
                .with("meter", row -> row.facts().code())
                .with("description", row -> row.facts().description())
                .word("quantity", "quantity.", row -> row.facts().quantity())
                .with("unit", row -> row.facts().quantity().unit())
                .with("resolution", row -> row.meter().state().resolution())
                .with("range-low", row -> row.facts().range().map(MeterRange::low))
                .with("range-high", row -> row.facts().range().map(MeterRange::high))
                .with("borrowed", row -> row.facts().borrowed())
                .with("borrowed-until", row -> row.facts().borrowedUntil())
                .with("calibrated-at", calibration(CalibrationDetails::calibratedAt))
                .with("certificate", calibration(CalibrationDetails::certificate))
                .with("calibration-due", row -> row.facts().calibrationDue())
                .word(
                        "due",
                        "practice.due.",
                        row -> due.getOrDefault(row.facts().id(), List.of()))
                .with("out-of-use-since", row -> row.meter().retiredAt());
    }

    private static Function<Row, Optional<?>> calibration(Function<CalibrationDetails, ?> part) {
        return row -> row.calibration().map(part);
    }

    private record Row(MeterDetails meter, Optional<CalibrationDetails> calibration) {
        MeterFacts facts() {
            return meter.facts();
        }
    }
}
