package dapple.target;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import dapple.species.UvZone;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The species of a site with their targets, and all versions of one, as files: a row for each limit, or one. */
@Controller
@Allowed(Action.SEE_STOCK)
class TargetsCsvController {
    private final TargetList list;
    private final SpeciesKeeping species;
    private final Targets targets;
    private final People people;
    private final CsvSheets sheets;

    TargetsCsvController(TargetList list, SpeciesKeeping species, Targets targets, People people, CsvSheets sheets) {
        this.list = list;
        this.species = species;
        this.targets = targets;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/targets.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        return sheets.of(
                me.site(),
                "targets",
                columns(people.names(me.siteId())),
                list.all(me.siteId()).stream().flatMap(Row::of).toList());
    }

    @GetMapping("/targets/{speciesId}.csv")
    View versions(@AuthenticationPrincipal SignedIn me, @PathVariable long speciesId) {
        SpeciesFacts found = species.get(me.siteId(), speciesId);
        Stream<TargetRow> versions = targets.versions(me.siteId(), speciesId).stream()
                .map(version -> new TargetRow(found, Optional.of(version), Optional.empty()));
        return sheets.of(
                me.site(),
                "targets-" + found.scientificName(),
                columns(people.names(me.siteId())),
                versions.flatMap(Row::of).toList());
    }

    private static CsvColumns<Row> columns(Map<Long, String> names) {
        return CsvColumns.<Row>none()
                .with("species", row -> row.of().species().scientificName())
                .with("common-name", row -> row.of().species().commonName())
                .with("uv-zone", zone(UvZone::number))
                .word("method", "method.", zone(UvZone::method))
                .with("target-version", version(found -> found.target().number()))
                .with("approved-at", version(found -> found.target().approvedAt()))
                .with("earlier-readings", version(found -> found.target().isForEarlierReadings()))
                .with("approved-by", version(found -> Optional.ofNullable(names.get(found.approvedBy()))))
                .with("reason", version(VersionDetails::reason))
                .word("quantity", "quantity.", limit(SourcedLimit::quantity))
                .word("limit-place", "place.", limit(SourcedLimit::place))
                .with(
                        "limit-low",
                        row -> row.limit()
                                .map(SourcedLimit::band)
                                .filter(band -> band.hasLow())
                                .map(band -> band.low()))
                .with("limit-high", limit(found -> found.band().high()))
                .with("unit", limit(found -> found.quantity().unit()))
                .word("source-kind", "mark.", limit(SourcedLimit::mark))
                .with("source", limit(SourcedLimit::source));
    }

    private static Function<Row, Optional<?>> version(Function<VersionDetails, ?> part) {
        return row -> row.of().version().map(part);
    }

    private static Function<Row, Optional<?>> zone(Function<UvZone, ?> part) {
        return version(found -> part.apply(found.target().zone()));
    }

    private static Function<Row, Optional<?>> limit(Function<SourcedLimit, ?> part) {
        return row -> row.limit().map(part);
    }

    private record Row(TargetRow of, Optional<SourcedLimit> limit) {
        static Stream<Row> of(TargetRow row) {
            return row.version()
                    .map(version ->
                            version.target().sourcedLimits().stream().map(limit -> new Row(row, Optional.of(limit))))
                    .orElseGet(() -> Stream.of(new Row(row, Optional.empty())));
        }
    }
}
