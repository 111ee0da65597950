package dapple.rig;

import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.lamp.MeasuredOutput;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.Map;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** All that was measured of one lamp as a file, newest first. */
@Controller
@Allowed(Action.SEE_STOCK)
class LampMeasuredCsvController {
    private final Lamps lamps;
    private final People people;
    private final CsvSheets sheets;

    LampMeasuredCsvController(Lamps lamps, People people, CsvSheets sheets) {
        this.lamps = lamps;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/lamps/{lampId}.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long lampId) {
        LampFacts lamp = lamps.get(me.siteId(), lampId);
        Map<Long, String> names = people.names(me.siteId());
        CsvColumns<MeasuredOutput> columns = CsvColumns.<MeasuredOutput>none()
                .with("tag", row -> lamp.tag())
                .with("model", row -> lamp.model().name())
                .with("taken-at", MeasuredOutput::measuredAt)
                .with("taken-by", row -> Optional.ofNullable(names.get(row.personId())))
                .word("quantity", "lamp.quantity.", row -> row.output().quantity())
                .with("amount", row -> row.output().reading())
                .with("unit", row -> row.output().quantity().unit())
                .with("distance", row -> row.output().distanceMetres())
                .with("relative-uncertainty", row -> row.output().relativeUncertainty())
                .with("source", row -> row.output().source())
                .with("counts", MeasuredOutput::stands)
                .with("withdrawn-at", MeasuredOutput::withdrawnAt)
                .with("withdrawn-by", row -> row.withdrawnBy().map(id -> names.getOrDefault(id, "")))
                .with("withdrawn-because", MeasuredOutput::withdrawnReason);
        return sheets.of(me.site(), "lamp-" + lamp.tag(), columns, lamps.measured(me.siteId(), lampId));
    }
}
