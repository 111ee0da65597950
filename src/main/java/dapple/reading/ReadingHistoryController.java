package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.practice.MeterDoubts;
import dapple.reading.ReadingHistory.Wanted;
import dapple.target.Targets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Everything that was ever read in an enclosure, a page at a time. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class ReadingHistoryController {
    private final ReadingHistory history;
    private final Enclosures enclosures;
    private final Targets targets;
    private final People people;
    private final VisitCovers covers;
    private final RepeatsOnRecord repeats;
    private final MeterDoubts doubts;

    ReadingHistoryController(
            ReadingHistory history,
            Enclosures enclosures,
            Targets targets,
            People people,
            VisitCovers covers,
            RepeatsOnRecord repeats,
            MeterDoubts doubts) {
        this.history = history;
        this.enclosures = enclosures;
        this.targets = targets;
        this.people = people;
        this.covers = covers;
        this.repeats = repeats;
        this.doubts = doubts;
    }

    @GetMapping("/enclosures/{enclosureId}/readings")
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam(required = false) @Nullable Long point,
            @RequestParam(required = false) @Nullable Quantity quantity,
            @RequestParam(defaultValue = "1") int page,
            Model model) {
        model.addAttribute("enclosure", enclosures.get(me.siteId(), enclosureId));
        List<PointFacts> points = history.points(me.siteId(), enclosureId);
        Wanted wanted = new Wanted(Optional.ofNullable(point), Optional.ofNullable(quantity));
        model.addAttribute("points", points);
        model.addAttribute("quantities", Quantity.measuredInTheField());
        model.addAttribute("chosenPoint", point);
        model.addAttribute("chosenQuantity", quantity);
        Page<HistoryLine> lines = history.page(me.siteId(), points, wanted, Math.max(0, page - 1));
        model.addAttribute("lines", lines);
        List<Long> ids = lines.map(line -> line.reading().id()).toList();
        model.addAttribute("covers", covers.atReadings(me.siteId(), ids));
        model.addAttribute("repeats", repeats.told(me.siteId(), lines.getContent()));
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute("doubts", doubts.at(me.siteId()));
        model.addAttribute("species", targets.speciesById(me.siteId()));
        return "reading/history";
    }
}
