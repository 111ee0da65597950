package dapple.rig;

import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** The lamps of a site as a file, those out of use among them. */
@Controller
@Allowed(Action.SEE_STOCK)
class LampsCsvController {
    private final Lamps lamps;
    private final FittingRepository fittings;
    private final CsvSheets sheets;

    LampsCsvController(Lamps lamps, FittingRepository fittings, CsvSheets sheets) {
        this.lamps = lamps;
        this.fittings = fittings;
        this.sheets = sheets;
    }

    @GetMapping("/lamps.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        Map<Long, LampPlace> places =
                fittings.places(me.siteId()).stream().collect(Collectors.toMap(LampPlace::lampId, Function.identity()));
        return sheets.of(me.site(), "lamps", columns(places), lamps.all(me.siteId()));
    }

    private static CsvColumns<LampFacts> columns(Map<Long, LampPlace> places) {
        Function<LampFacts, Optional<LampPlace>> place = lamp -> Optional.ofNullable(places.get(lamp.id()));
        return CsvColumns.<LampFacts>none()
                .with("tag", LampFacts::tag)
                .with("model", lamp -> lamp.model().name())
                .word("lamp-class", "lamp-class.", lamp -> lamp.model().lampClass())
                .with("watts", lamp -> lamp.model().watts())
                .with("burn-hours-at-entry", LampFacts::burnHoursAtEntry)
                .with("bought-on", LampFacts::boughtOn)
                .with("enclosure", place.andThen(found -> found.map(LampPlace::enclosure)))
                .with("place", place.andThen(found -> found.map(LampPlace::place)))
                .with("out-of-use-since", LampFacts::retiredAt);
    }
}
