package dapple.lamp;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** What lamp models give as a file, of all of a site or of one: a row for each quantity that something is stated of, or one. */
@Controller
@Allowed(Action.SEE_STOCK)
class LampModelsCsvController {
    private final Lamps lamps;
    private final CsvSheets sheets;

    LampModelsCsvController(Lamps lamps, CsvSheets sheets) {
        this.lamps = lamps;
        this.sheets = sheets;
    }

    @GetMapping("/lamp-models.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        return sheets.of(
                me.site(),
                "lamp-models",
                columns(),
                lamps.models(me.siteId()).stream().flatMap(Row::of).toList());
    }

    @GetMapping("/lamp-models/{modelId}.csv")
    View one(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId) {
        LampModelFacts model = lamps.model(me.siteId(), modelId);
        return sheets.of(
                me.site(),
                "lamp-model-" + model.name(),
                columns(),
                Row.of(model).toList());
    }

    private static CsvColumns<Row> columns() {
        return CsvColumns.<Row>none()
                .with("model", row -> row.model().name())
                .word("lamp-class", "lamp-class.", row -> row.model().lampClass())
                .with("watts", row -> row.model().watts())
                .word("quantity", "quantity.", stated(LampOutput::quantity))
                .with("amount", stated(LampOutput::reading))
                .with("unit", stated(output -> output.quantity().unit()))
                .with("distance", stated(LampOutput::distanceMetres))
                .with("relative-uncertainty", stated(LampOutput::relativeUncertainty))
                .word("source-kind", "mark.", stated(LampOutput::mark))
                .with("source", stated(LampOutput::source));
    }

    private static Function<Row, Optional<?>> stated(Function<LampOutput, ?> part) {
        return row -> row.output().map(part);
    }

    private record Row(LampModelFacts model, Optional<LampOutput> output) {
        static Stream<Row> of(LampModelFacts model) {
            return model.outputs().isEmpty()
                    ? Stream.of(new Row(model, Optional.empty()))
                    : model.outputs().stream().map(output -> new Row(model, Optional.of(output)));
        }
    }
}
