package dapple.comparison;

import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** When each meter of a comparison read each point, as a file; no amounts, as on the page. */
@Controller
@Allowed(Action.SEE_STOCK)
class MeterComparisonCsvController {
    private final Comparisons comparisons;
    private final MeterReads reads;
    private final Meters meters;
    private final Places places;
    private final CsvSheets sheets;

    MeterComparisonCsvController(
            Comparisons comparisons, MeterReads reads, Meters meters, Places places, CsvSheets sheets) {
        this.comparisons = comparisons;
        this.reads = reads;
        this.meters = meters;
        this.places = places;
        this.sheets = sheets;
    }

    @GetMapping("/meters/comparisons/{comparisonId}.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long comparisonId) {
        ComparisonFacts comparison = comparisons.get(me.siteId(), comparisonId);
        Map<Long, Candidate> placeById = places.byId(me.siteId());
        Map<Long, MeterFacts> meterById = meters.byId(me.siteId());
        CsvColumns<Cell> columns = CsvColumns.<Cell>none()
                .with(
                        "room",
                        cell -> place(cell, placeById)
                                .map(place -> place.enclosure().room()))
                .with(
                        "enclosure",
                        cell -> place(cell, placeById)
                                .map(place -> place.enclosure().code()))
                .with(
                        "point",
                        cell -> place(cell, placeById)
                                .map(place -> place.point().code()))
                .word("quantity", "quantity.", cell -> comparison.quantity())
                .with(
                        "meter",
                        cell -> Optional.ofNullable(meterById.get(cell.meterId()))
                                .map(MeterFacts::code))
                .with("taken-at", Cell::readAt)
                .with("counts", cell -> cell.point().counts());
        return sheets.of(
                me.site(),
                "comparison-" + comparison.id(),
                columns,
                Progress.of(comparison, reads.of(comparison)).points().stream()
                        .flatMap(point -> Cell.of(point, comparison))
                        .toList());
    }

    private static Optional<Candidate> place(Cell cell, Map<Long, Candidate> placeById) {
        return Optional.ofNullable(placeById.get(cell.point().pointId()));
    }

    private record Cell(Progress.AtPoint point, long meterId, Optional<Instant> readAt) {
        static Stream<Cell> of(Progress.AtPoint point, ComparisonFacts comparison) {
            return IntStream.range(0, comparison.meterIds().size())
                    .mapToObj(at -> new Cell(
                            point, comparison.meterIds().get(at), point.readAt().get(at)));
        }
    }
}
