package dapple.review;

import dapple.agreement.FindingFacts;
import dapple.agreement.MeterFindings;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.reading.Rejudging;
import dapple.rig.Rigs;
import dapple.round.Rounds;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Every enclosure that needs somebody, worst and oldest first. */
@Controller
@Allowed(Action.SEE_REVIEW)
@RequestMapping("/review")
class ReviewController {
    private final Desks desks;
    private final Rounds rounds;
    private final Rigs rigs;
    private final MeterFindings findings;
    private final Meters meters;
    private final Rejudging rejudging;
    private final Clock clock;

    ReviewController(
            Desks desks,
            Rounds rounds,
            Rigs rigs,
            MeterFindings findings,
            Meters meters,
            Rejudging rejudging,
            Clock clock) {
        this.desks = desks;
        this.rounds = rounds;
        this.rigs = rigs;
        this.findings = findings;
        this.meters = meters;
        this.rejudging = rejudging;
        this.clock = clock;
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, Filter filter, Model model) {
        show(me, filter, model);
        return "review/review";
    }

    /** The part of the page that renews itself while it is open. */
    @GetMapping("/standing")
    String standing(@AuthenticationPrincipal SignedIn me, Filter filter, Model model) {
        show(me, filter, model);
        return "review/review :: standing";
    }

    private void show(SignedIn me, Filter filter, Model model) {
        Desk whole = desks.at(me, Filter.NONE);
        List<Standing> all = whole.review().standings();
        model.addAttribute("desk", whole.only(filter, today(me)));
        model.addAttribute("today", today(me));
        model.addAttribute("judging", rejudging.isUnderWay(me.siteId()));
        OverdueRounds overdue = OverdueRounds.of(rounds.now(me));
        model.addAttribute("rounds", overdue.only(filter).rounds());
        Map<Long, String> names = new HashMap<>(whole.names());
        names.putAll(overdue.names());
        model.addAttribute("names", names);
        List<FindingFacts> told = findings.open(me.siteId());
        model.addAttribute("told", told);
        model.addAttribute("codes", told.isEmpty() ? Map.of() : codes(me));
        model.addAttribute("changes", rigs.lastChanges(me.siteId()));
        model.addAttribute("kinds", Urgency.values());
        model.addAttribute("rooms", rooms(all));
        model.addAttribute("species", species(all));
    }

    private Map<Long, String> codes(SignedIn me) {
        return meters.byId(me.siteId()).values().stream().collect(Collectors.toMap(MeterFacts::id, MeterFacts::code));
    }

    private LocalDate today(SignedIn me) {
        return LocalDate.ofInstant(clock.instant(), me.zone());
    }

    private static Map<Long, String> rooms(List<Standing> all) {
        Map<Long, String> rooms = new LinkedHashMap<>();
        all.forEach(standing ->
                rooms.put(standing.enclosure().roomId(), standing.enclosure().room()));
        return rooms;
    }

    private static Map<Long, String> species(List<Standing> all) {
        Map<String, Long> byName = new TreeMap<>();
        all.stream()
                .flatMap(standing -> standing.species().stream())
                .forEach(kind -> byName.put(kind.scientificName(), kind.id()));
        Map<Long, String> species = new LinkedHashMap<>();
        byName.forEach((name, id) -> species.put(id, name));
        return species;
    }
}
