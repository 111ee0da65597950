package dapple.species;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** The library as a file, searched as on the page. */
@Controller
@Allowed(Action.SEE_STOCK)
class LibraryCsvController {
    private final Library library;
    private final CsvSheets sheets;

    LibraryCsvController(Library library, CsvSheets sheets) {
        this.library = library;
        this.sheets = sheets;
    }

    @GetMapping("/library.csv")
    View found(@AuthenticationPrincipal SignedIn me, @RequestParam(defaultValue = "") String name) {
        CsvColumns<Taxon> columns = CsvColumns.<Taxon>none()
                .with("species", row -> row.name().scientific())
                .with("common-name", row -> row.name().common())
                .with("synonym", Taxon::synonym)
                .with("uv-zone", Taxon::zone)
                .with("other-uv-zone", Taxon::alternative)
                .word("method", "method.", Taxon::methods)
                .word("source-kind", "mark.", Taxon::mark)
                .with("note", Taxon::note);
        return sheets.of(me.site(), "library", columns, library.search(name));
    }
}
