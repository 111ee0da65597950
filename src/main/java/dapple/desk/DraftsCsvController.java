package dapple.desk;

import dapple.draft.DraftFacts;
import dapple.draft.Drafts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The drafts of an enclosure as a file, those in work with what they would give. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class DraftsCsvController {
    private final DeskOpening desks;
    private final Looking looking;
    private final Drafts drafts;
    private final People people;
    private final CsvSheets sheets;

    DraftsCsvController(DeskOpening desks, Looking looking, Drafts drafts, People people, CsvSheets sheets) {
        this.desks = desks;
        this.looking = looking;
        this.drafts = drafts;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/enclosures/{enclosureId}/desk.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        Desk desk = desks.of(me, enclosureId);
        String enclosure = desk.installed().enclosure().code();
        Map<Long, String> names = people.names(me.siteId());
        CsvColumns<Row> columns = CsvColumns.<Row>none()
                .with("enclosure", row -> enclosure)
                .with("name", row -> row.draft().name())
                .with("made-at", row -> row.draft().made().at())
                .with("made-by", row -> name(row.draft().made(), names))
                .with("changed-at", row -> row.draft().changed().at())
                .with("changed-by", row -> name(row.draft().changed(), names))
                .with("closed-at", row -> row.draft().closedAt())
                .with("installed", row -> row.draft().installedBy().isPresent())
                .word("predicted-basking", "state.", line(TargetLine::basking))
                .word("predicted-shade", "state.", line(TargetLine::shade))
                .word("predicted-ceiling", "state.", line(TargetLine::ceiling))
                .with("watts", line(line -> known(line.power())));
        return sheets.of(
                me.site(),
                "drafts-" + enclosure,
                columns,
                drafts.of(desk.place()).stream().map(draft -> row(draft, desk)).toList());
    }

    private Row row(DraftFacts draft, Desk desk) {
        return new Row(draft, Optional.of(draft).filter(DraftFacts::isOpen).map(open -> {
            EnclosureScene scene = desk.under(open.rig());
            return TargetLine.of(scene, looking.light(scene));
        }));
    }

    private static Optional<String> name(DraftFacts.Said said, Map<Long, String> names) {
        return Optional.ofNullable(names.get(said.personId()));
    }

    /** Of lamps of which nobody knows what they take there is no sum. */
    private static Optional<Double> known(Power power) {
        return Optional.of(power).filter(all -> all.unknown() == 0).map(Power::watts);
    }

    private static Function<Row, Optional<?>> line(Function<TargetLine, Optional<?>> part) {
        return row -> row.line().flatMap(part::apply);
    }

    private record Row(DraftFacts draft, Optional<TargetLine> line) {}
}
