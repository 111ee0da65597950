package dapple.enclosure;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The measuring points of an enclosure as a file. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class PointsCsvController {
    private final Enclosures enclosures;
    private final CsvSheets sheets;

    PointsCsvController(Enclosures enclosures, CsvSheets sheets) {
        this.enclosures = enclosures;
        this.sheets = sheets;
    }

    @GetMapping("/enclosures/{enclosureId}.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        CsvColumns<PointFacts> columns = CsvColumns.<PointFacts>none()
                .with("room", row -> enclosure.room())
                .with("enclosure", row -> enclosure.code())
                .with("point", PointFacts::code)
                .word("role-of-point", "role-of-point.", PointFacts::role)
                .with("place", PointFacts::place)
                .word("quantity", "quantity.", PointFacts::quantities)
                .word("to-be-held", "facing.", PointFacts::facing)
                .with("position-x", position(Position::xMetres))
                .with("position-y", position(Position::yMetres))
                .with("position-z", position(Position::zMetres));
        return sheets.of(
                me.site(), "points-" + enclosure.code(), columns, enclosures.pointsOf(me.siteId(), enclosureId));
    }

    private static Function<PointFacts, Optional<?>> position(Function<Position, ?> part) {
        return row -> row.position().map(part);
    }
}
