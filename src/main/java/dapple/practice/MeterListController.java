package dapple.practice;

import dapple.meter.MeterDetails;
import dapple.meter.MeterRegister;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The meters of a site: how they stand and what is due with them. */
@Controller
@Allowed(Action.SEE_STOCK)
class MeterListController {
    private final MeterRegister meters;
    private final MeterStandings standings;

    MeterListController(MeterRegister meters, MeterStandings standings) {
        this.meters = meters;
        this.standings = standings;
    }

    @GetMapping("/meters")
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        List<MeterDetails> all = meters.all(me.siteId());
        MeterStanding standing = standings.at(me.siteId(), me.zone());
        Map<Long, List<PracticeDue>> due =
                standing
                        .due(all.stream()
                                .filter(MeterDetails::isInUse)
                                .map(MeterDetails::facts)
                                .toList())
                        .stream()
                        .collect(Collectors.groupingBy(PracticeDue::meterId));
        model.addAttribute("meters", all);
        model.addAttribute("standing", standing);
        model.addAttribute("due", due);
        return "practice/list";
    }
}
