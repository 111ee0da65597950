package dapple.comparison;

import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** The comparisons of meters of a site as a file. */
@Controller
@Allowed(Action.SEE_STOCK)
class ComparisonsCsvController {
    private final Comparisons comparisons;
    private final Meters meters;
    private final People people;
    private final CsvSheets sheets;

    ComparisonsCsvController(Comparisons comparisons, Meters meters, People people, CsvSheets sheets) {
        this.comparisons = comparisons;
        this.meters = meters;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/meters/comparisons.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        Map<Long, MeterFacts> meterById = meters.byId(me.siteId());
        Map<Long, String> names = people.names(me.siteId());
        CsvColumns<ComparisonFacts> columns = CsvColumns.<ComparisonFacts>none()
                .with("begun-at", ComparisonFacts::begunAt)
                .with("begun-by", row -> Optional.ofNullable(names.get(row.begunBy())))
                .word("quantity", "quantity.", ComparisonFacts::quantity)
                .with("meters", row -> codes(row, meterById))
                .with("points-compared", row -> row.pointIds().size())
                .with("ended-at", ComparisonFacts::endedAt)
                .with("broken-off-by", broken(one -> names.getOrDefault(one.personId(), "")))
                .with("broken-off-because", broken(ComparisonFacts.Broken::reason));
        return sheets.of(me.site(), "comparisons", columns, comparisons.all(me.siteId()));
    }

    private static List<String> codes(ComparisonFacts row, Map<Long, MeterFacts> meterById) {
        return row.meterIds().stream()
                .flatMap(id -> Optional.ofNullable(meterById.get(id)).stream())
                .map(MeterFacts::code)
                .toList();
    }

    private static Function<ComparisonFacts, Optional<?>> broken(Function<ComparisonFacts.Broken, ?> part) {
        return row -> row.broken().map(part);
    }
}
