package dapple.commissioning;

import dapple.commissioning.Trials.Opened;
import dapple.enclosure.EnclosureFacts;
import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.prediction.Predicted;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The protocol of a commissioning as a file: each quantity at each point, as predicted and as read, and who accepted. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class CommissioningCsvController {
    private final Trials trials;
    private final CsvSheets sheets;

    CommissioningCsvController(Trials trials, CsvSheets sheets) {
        this.trials = trials;
        this.sheets = sheets;
    }

    @GetMapping("/enclosures/{enclosureId}/commissioning.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        Opened opened = trials.openWithoutResidents(me, enclosureId);
        EnclosureFacts enclosure = opened.scene().enclosure();
        List<Row> rows = opened.trial().stream().flatMap(Row::of).toList();
        return sheets.of(me.site(), "commissioning-" + enclosure.code(), columns(enclosure), rows);
    }

    private static CsvColumns<Row> columns(EnclosureFacts enclosure) {
        return CsvColumns.<Row>none()
                .with("enclosure", row -> enclosure.code())
                .with("rig-since", row -> row.trial().change().at())
                .with("point", row -> row.planned().point().code())
                .with("place", row -> row.planned().point().place())
                .word("to-be-held", "facing.", row -> row.planned().point().facing())
                .with("to-be-read", row -> row.planned().isWanted())
                .word("quantity", "quantity.", Row::quantity)
                .with("unit", row -> row.quantity().unit())
                .with("predicted", predicted(Predicted::amount))
                .with("predicted-low", predicted(one -> one.interval().low()))
                .with("predicted-high", predicted(one -> one.interval().high()))
                .with("amount", taken(one -> CsvColumns.computed(one.reading().amount())))
                .with(
                        "amount-low",
                        taken(one ->
                                CsvColumns.computed(one.reading().interval().low())))
                .with(
                        "amount-high",
                        taken(one ->
                                CsvColumns.computed(one.reading().interval().high())))
                .with("taken-at", taken(one -> one.reading().takenAt()))
                .with("meter", taken(one -> one.meter().code()))
                .with("accepted-at", accepted(CommissioningFacts::acceptedAt))
                .with("accepted-by", accepted(CommissioningFacts::acceptedBy))
                .with("reason", accepted(CommissioningFacts::reason));
    }

    private static Function<Row, Optional<?>> predicted(Function<Predicted, Double> part) {
        return row -> Optional.ofNullable(row.planned().predicted().get(row.quantity()))
                .map(part)
                .map(CsvColumns::computed);
    }

    private static Function<Row, Optional<?>> taken(Function<Taken, ?> part) {
        return row -> row.planned().of(row.quantity()).map(part);
    }

    private static Function<Row, Optional<?>> accepted(Function<CommissioningFacts, ?> part) {
        return row -> row.trial().accepted().map(part);
    }

    private record Row(Trial trial, PlannedPoint planned, Quantity quantity) {
        static Stream<Row> of(Trial trial) {
            return trial.plan().stream()
                    .flatMap(planned ->
                            planned.point().quantities().stream().map(quantity -> new Row(trial, planned, quantity)));
        }
    }
}
