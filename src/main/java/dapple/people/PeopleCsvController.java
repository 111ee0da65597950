package dapple.people;

import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** The people of a site as a file, for its administrators. */
@Controller
@Allowed(Action.MANAGE_PEOPLE)
class PeopleCsvController {
    private final People people;
    private final CsvSheets sheets;

    PeopleCsvController(People people, CsvSheets sheets) {
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/people.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        CsvColumns<PersonFacts> columns = CsvColumns.<PersonFacts>none()
                .with("name", PersonFacts::name)
                .with("sign-in-name", PersonFacts::signInName)
                .word("roles", "role.", PersonFacts::roles)
                .with("last-day", PersonFacts::lastDay)
                .with("access-ended", PersonFacts::deactivatedAt);
        return sheets.of(me.site(), "people", columns, people.at(me.siteId()));
    }
}
