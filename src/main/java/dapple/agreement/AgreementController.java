package dapple.agreement;

import dapple.meter.MeterDetails;
import dapple.meter.MeterFacts;
import dapple.meter.MeterRegister;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** What the readings say of the meters: of all, of one, and one finding with the form to settle it. */
@Controller
@Allowed(Action.SEE_STOCK)
class AgreementController {
    /** Half a year is enough for a glance; a meter's own page has all. */
    private static final int WEEKS = 26;

    private final AgreementShown shown;
    private final MeterFindings findings;
    private final MeterRegister register;
    private final Meters meters;
    private final People people;

    AgreementController(
            AgreementShown shown, MeterFindings findings, MeterRegister register, Meters meters, People people) {
        this.shown = shown;
        this.findings = findings;
        this.register = register;
        this.meters = meters;
        this.people = people;
    }

    @GetMapping("/meters/agreement")
    String all(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute(
                "quantities",
                shown.at(me.siteId()).stream().map(one -> one.withNewest(WEEKS)).toList());
        told(me, findings.all(me.siteId()), model);
        return "agreement/all";
    }

    @GetMapping("/meters/{meterId}/agreement")
    String one(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId, Model model) {
        MeterDetails meter = register.get(me.siteId(), meterId);
        Optional<QuantityShown> quantity = shown.at(me.siteId()).stream()
                .filter(one -> one.quantity() == meter.facts().quantity())
                .findFirst();
        model.addAttribute("meter", meter);
        model.addAttribute("quantity", quantity);
        model.addAttribute("known", quantity.flatMap(one -> one.of(meterId)));
        told(
                me,
                findings.all(me.siteId()).stream()
                        .filter(one -> one.meterId().equals(Optional.of(meterId)))
                        .toList(),
                model);
        return "agreement/meter";
    }

    private void told(SignedIn me, List<FindingFacts> all, Model model) {
        model.addAttribute("open", all.stream().filter(FindingFacts::isOpen).toList());
        model.addAttribute("past", all.stream().filter(one -> !one.isOpen()).toList());
        names(me, model);
    }

    private void names(SignedIn me, Model model) {
        Map<Long, String> codes =
                meters.byId(me.siteId()).values().stream().collect(Collectors.toMap(MeterFacts::id, MeterFacts::code));
        model.addAttribute("codes", codes);
        model.addAttribute("names", people.names(me.siteId()));
    }

    @GetMapping("/meters/agreement/{findingId}")
    String finding(@AuthenticationPrincipal SignedIn me, @PathVariable long findingId, Model model) {
        model.addAttribute("form", new SettleForm(""));
        return finding(me, model, findings.get(me.siteId(), findingId));
    }

    @PostMapping("/meters/agreement/{findingId}")
    @Allowed(Action.SETTLE_METERS)
    String settle(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long findingId,
            @Valid @ModelAttribute("form") SettleForm form,
            BindingResult errors,
            HttpServletResponse response,
            Model model) {
        if (errors.hasErrors()) {
            return finding(me, model, findings.get(me.siteId(), findingId));
        }
        try {
            findings.settle(me.siteId(), findingId, me.personId(), form.reason().strip());
            return "redirect:/meters/agreement/" + findingId;
        } catch (ConflictException meanwhile) {
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            model.addAttribute("late", form.reason());
            return finding(me, model, findings.get(me.siteId(), findingId));
        }
    }

    private String finding(SignedIn me, Model model, FindingFacts finding) {
        model.addAttribute("finding", finding);
        names(me, model);
        return "agreement/finding";
    }
}
