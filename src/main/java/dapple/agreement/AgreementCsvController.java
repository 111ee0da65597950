package dapple.agreement;

import dapple.meter.MeterFacts;
import dapple.meter.MeterRegister;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** What the readings told of meters as files: of all, and of one. */
@Controller
@Allowed(Action.SEE_STOCK)
class AgreementCsvController {
    private final MeterFindings findings;
    private final MeterRegister register;
    private final Meters meters;
    private final People people;
    private final CsvSheets sheets;

    AgreementCsvController(
            MeterFindings findings, MeterRegister register, Meters meters, People people, CsvSheets sheets) {
        this.findings = findings;
        this.register = register;
        this.meters = meters;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/meters/agreement.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        return sheets.of(me.site(), "agreement", columns(me), findings.all(me.siteId()));
    }

    @GetMapping("/meters/{meterId}/agreement.csv")
    View one(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        MeterFacts meter = register.get(me.siteId(), meterId).facts();
        List<FindingFacts> ofMeter = findings.all(me.siteId()).stream()
                .filter(one -> one.meterId().equals(Optional.of(meterId)))
                .toList();
        return sheets.of(me.site(), "agreement-" + meter.code(), columns(me), ofMeter);
    }

    private CsvColumns<FindingFacts> columns(SignedIn me) {
        Map<Long, MeterFacts> byId = meters.byId(me.siteId());
        Map<Long, String> names = people.names(me.siteId());
        return CsvColumns.<FindingFacts>none()
                .word("quantity", "quantity.", FindingFacts::quantity)
                .with("meter", row -> row.meterId().map(byId::get).map(MeterFacts::code))
                .word("found", "agreement.kind.", FindingFacts::kind)
                .with("since", FindingFacts::weekFrom)
                .with("change-percent", row -> CsvColumns.computed(row.percent()))
                .with("change-percent-low", row -> CsvColumns.computed(row.lowPercent()))
                .with("change-percent-high", row -> CsvColumns.computed(row.highPercent()))
                .with("change-percent-now", row -> CsvColumns.computed(row.percentNow()))
                .with("or-meters", row -> doubted(row, byId))
                .with("or-lamps", FindingFacts::isMaybeLamps)
                .with("told-at", FindingFacts::toldAt)
                .with("taken-back-at", FindingFacts::takenBackAt)
                .with("settled-at", settled(FindingFacts.Settlement::at))
                .with("settled-by", settled(one -> one.by().map(id -> names.getOrDefault(id, ""))))
                .with("settled-because", settled(FindingFacts.Settlement::reason));
    }

    private static List<String> doubted(FindingFacts row, Map<Long, MeterFacts> byId) {
        return row.doubts().stream()
                .map(byId::get)
                .filter(Objects::nonNull)
                .map(MeterFacts::code)
                .sorted()
                .toList();
    }

    private static Function<FindingFacts, Optional<?>> settled(Function<FindingFacts.Settlement, ?> part) {
        return row -> row.settlement().map(part);
    }
}
