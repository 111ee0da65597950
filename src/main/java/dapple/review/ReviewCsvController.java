package dapple.review;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.reading.ReadingView;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import dapple.species.SpeciesFacts;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** How every enclosure of a site stands as a file, with what has been decided; restricted as on the page. */
@Controller
@Allowed(Action.SEE_REVIEW)
class ReviewCsvController {
    private final Desks desks;
    private final CsvSheets sheets;
    private final Clock clock;

    ReviewCsvController(Desks desks, CsvSheets sheets, Clock clock) {
        this.desks = desks;
        this.sheets = sheets;
        this.clock = clock;
    }

    @GetMapping("/review.csv")
    View all(@AuthenticationPrincipal SignedIn me, Filter filter) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), me.zone());
        Desk whole = desks.at(me, Filter.NONE);
        return sheets.of(me.site(), "review", columns(whole.names(), today), rows(whole.only(filter, today)));
    }

    private static List<Found> rows(Desk desk) {
        Map<Long, Finding> findings = Stream.concat(desk.open().stream(), desk.accepted().stream())
                .collect(Collectors.toMap(
                        finding -> finding.standing().enclosure().id(), Function.identity()));
        return desk.review().standings().stream()
                .map(standing -> new Found(
                        standing,
                        Optional.ofNullable(findings.get(standing.enclosure().id()))))
                .toList();
    }

    private static CsvColumns<Found> columns(Map<Long, String> names, LocalDate today) {
        return CsvColumns.<Found>none()
                .with("room", row -> row.standing().enclosure().room())
                .with("enclosure", row -> row.standing().enclosure().code())
                .with(
                        "species",
                        row -> row.standing().species().stream()
                                .map(SpeciesFacts::scientificName)
                                .toList())
                .word("state", "state.", row -> row.standing().state())
                .with("since", deciding(point -> point.since()))
                .word("urgency", "urgency.", row -> row.finding().map(Finding::urgency))
                .with("point", deciding(at -> at.point().code()))
                .word(
                        "role-of-point",
                        "role-of-point.",
                        deciding(at -> at.point().role()))
                .word("quantity", "quantity.", deciding(Standing.AtPoint::quantity))
                .with(
                        "amount",
                        view(found -> CsvColumns.computed(found.reading().amount())))
                .with(
                        "amount-low",
                        view(found ->
                                CsvColumns.computed(found.reading().interval().low())))
                .with(
                        "amount-high",
                        view(found ->
                                CsvColumns.computed(found.reading().interval().high())))
                .with("unit", deciding(at -> at.quantity().unit()))
                .with(
                        "limit-low",
                        view(found -> found.asked().filter(Band::hasLow).map(Band::low)))
                .with("limit-high", view(found -> found.asked().map(Band::high)))
                .with(
                        "ceiling",
                        view(found -> found.limits().filter(Limits::hasCeiling).map(Limits::ceiling)))
                .with("taken-at", view(found -> found.reading().takenAt()))
                .with("meter", view(found -> found.meter().code()))
                .with(
                        "given-to-person",
                        row -> row.finding()
                                .flatMap(Finding::given)
                                .flatMap(DecisionFacts::givenTo)
                                .map(id -> names.getOrDefault(id, "")))
                .with(
                        "accepted-until",
                        row -> row.finding()
                                .flatMap(finding -> finding.acceptance(today))
                                .flatMap(DecisionFacts::until))
                .with(
                        "decisions",
                        row -> row.finding().map(Finding::decisions).orElse(List.of()).stream()
                                .map(DecisionFacts::text)
                                .filter(text -> !text.isEmpty())
                                .toList());
    }

    private static Function<Found, Optional<?>> deciding(Function<Standing.AtPoint, ?> part) {
        return row -> row.standing().deciding().map(part);
    }

    private static Function<Found, Optional<?>> view(Function<ReadingView, ?> part) {
        return row -> row.standing().deciding().flatMap(Standing.AtPoint::view).map(part);
    }
}
