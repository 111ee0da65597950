package dapple.importing;

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
import org.springframework.web.servlet.View;

/** The files that were sent to be imported, as a file. */
@Controller
@Allowed(Action.IMPORT)
class ImportsCsvController {
    private final Runs runs;
    private final People people;
    private final CsvSheets sheets;

    ImportsCsvController(Runs runs, People people, CsvSheets sheets) {
        this.runs = runs;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/records/import.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        Map<Long, String> names = people.names(me.siteId());
        CsvColumns<Run> columns = CsvColumns.<Run>none()
                .with("file", Run::fileName)
                .with("sent-at", Run::begunAt)
                .with("sent-by", row -> Optional.ofNullable(names.get(row.begunBy())))
                .word("state", "import.run.", Run::state)
                .with("readings-stored", row -> row.done().map(Done::stored))
                .with("bad-rows-left-out", row -> row.done().map(Done::leftOut))
                .with("ended-at", Run::endedAt)
                .with("bytes", Run::bytes)
                .with("sha-256", Run::sha256);
        return sheets.of(me.site(), "imports", columns, runs.newest(me.siteId()));
    }
}
