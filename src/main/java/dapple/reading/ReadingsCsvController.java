package dapple.reading;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.reading.ReadingHistory.Wanted;
import dapple.site.CsvSheets;
import dapple.target.Targets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Everything that was ever read in an enclosure as a file, restricted as on the page, oldest first. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class ReadingsCsvController {
    private final ReadingHistory history;
    private final ReadingLines lines;
    private final Enclosures enclosures;
    private final Targets targets;
    private final People people;
    private final CsvSheets sheets;

    ReadingsCsvController(
            ReadingHistory history,
            ReadingLines lines,
            Enclosures enclosures,
            Targets targets,
            People people,
            CsvSheets sheets) {
        this.history = history;
        this.lines = lines;
        this.enclosures = enclosures;
        this.targets = targets;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/enclosures/{enclosureId}/readings.csv")
    View of(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam(required = false) @Nullable Long point,
            @RequestParam(required = false) @Nullable Quantity quantity) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        Map<Long, PointFacts> points = history.points(me.siteId(), enclosureId).stream()
                .collect(Collectors.toMap(PointFacts::id, Function.identity()));
        Wanted wanted = new Wanted(Optional.ofNullable(point), Optional.ofNullable(quantity));
        List<Long> ids = wanted.points(points);
        return sheets.of(
                me.site(),
                "readings-" + enclosure.code(),
                ReadingColumns.of(people.names(me.siteId()), targets.speciesById(me.siteId())),
                line -> lines.at(me.siteId(), ids, wanted.quantities(), line));
    }
}
