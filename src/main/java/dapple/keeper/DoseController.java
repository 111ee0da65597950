package dapple.keeper;

import dapple.light.dose.KeeperDose;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import java.time.LocalDate;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** One's own light, day by day: nobody else sees it. */
@Controller
@Allowed(Action.KEEP_OWN_ACCOUNT)
@RequestMapping("/account/dose")
class DoseController {
    private final KeptDoses doses;

    DoseController(KeptDoses doses) {
        this.doses = doses;
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        List<DoseDay> days = doses.days(me);
        model.addAttribute("days", days);
        model.addAttribute("today", ofToday(days, doses.today(me)));
        model.addAttribute("shownDays", KeptDoses.SHOWN_DAYS);
        return "keeper/dose";
    }

    private static KeeperDose ofToday(List<DoseDay> days, LocalDate today) {
        return days.stream()
                .filter(day -> day.date().equals(today))
                .map(DoseDay::dose)
                .findFirst()
                .orElse(KeeperDose.NONE);
    }

    @PostMapping("/erase")
    String erase(@AuthenticationPrincipal SignedIn me) {
        doses.erase(me);
        return "redirect:/account/dose?erased";
    }
}
