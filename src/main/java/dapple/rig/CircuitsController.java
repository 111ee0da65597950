package dapple.rig;

import dapple.enclosure.Enclosures;
import dapple.enclosure.RoomFacts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Histories;
import dapple.people.SignedIn;
import dapple.site.AuditedThing;
import dapple.site.HistoryHead;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The circuits of a site: entered, renamed, and who changed what. */
@Controller
@RequestMapping("/circuits")
class CircuitsController {
    private static final String FRESH = "rig/circuit-new";
    private static final String CHANGE = "rig/circuit";

    private final Circuits circuits;
    private final Enclosures enclosures;
    private final Histories histories;

    CircuitsController(Circuits circuits, Enclosures enclosures, Histories histories) {
        this.circuits = circuits;
        this.enclosures = enclosures;
        this.histories = histories;
    }

    /** Names of the rooms in walking order. */
    @ModelAttribute("rooms")
    Map<Long, String> rooms(@AuthenticationPrincipal SignedIn me) {
        return enclosures.rooms(me.siteId()).stream()
                .collect(Collectors.toMap(RoomFacts::id, RoomFacts::name, (one, other) -> one, LinkedHashMap::new));
    }

    @GetMapping
    @Allowed(Action.SEE_STOCK)
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("circuits", circuits.all(me.siteId()));
        model.addAttribute("loads", circuits.lampsOn(me.siteId()));
        return "rig/circuits";
    }

    @GetMapping("/new")
    @Allowed(Action.CHANGE_RIGS)
    String fresh(Model model) {
        model.addAttribute("form", CircuitForm.empty());
        return FRESH;
    }

    @PostMapping("/new")
    @Allowed(Action.CHANGE_RIGS)
    String add(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") CircuitForm form,
            BindingResult errors) {
        if (errors.hasErrors()) {
            return FRESH;
        }
        try {
            CircuitChange added = form.change();
            circuits.add(me.siteId(), added.roomId(), added.name());
            return "redirect:/circuits";
        } catch (TakenException taken) {
            errors.rejectValue("name", "circuit.name.taken");
        } catch (NotFoundException strange) {
            errors.rejectValue("roomId", "circuit.room.wrong");
        }
        return FRESH;
    }

    @GetMapping("/{circuitId}")
    @Allowed(Action.CHANGE_RIGS)
    String form(@AuthenticationPrincipal SignedIn me, @PathVariable long circuitId, Model model) {
        CircuitDetails circuit = circuits.get(me.siteId(), circuitId);
        model.addAttribute("circuit", circuit);
        model.addAttribute("form", CircuitForm.of(circuit));
        return CHANGE;
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping("/{circuitId}")
    @Allowed(Action.CHANGE_RIGS)
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long circuitId,
            @Valid @ModelAttribute("form") CircuitForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        CircuitDetails now = circuits.get(me.siteId(), circuitId);
        model.addAttribute("circuit", now);
        if (errors.hasErrors()) {
            return CHANGE;
        }
        try {
            return change(me, circuitId, form, errors);
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            CircuitDetails theirs = circuits.get(me.siteId(), circuitId);
            model.addAttribute("theirs", theirs);
            model.addAttribute("form", form.onVersion(theirs.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return CHANGE;
        }
    }

    private String change(SignedIn me, long circuitId, CircuitForm form, BindingResult errors) {
        try {
            circuits.change(me.siteId(), circuitId, form.versionSeen(), form.change());
            return "redirect:/circuits";
        } catch (TakenException taken) {
            errors.rejectValue("name", "circuit.name.taken");
        } catch (NotFoundException strange) {
            errors.rejectValue("roomId", "circuit.room.wrong");
        }
        return CHANGE;
    }

    @GetMapping({"/{circuitId}/history", "/{circuitId}/history.csv"})
    @Allowed(Action.AUDIT)
    ModelAndView history(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long circuitId,
            @ModelAttribute(name = "rooms", binding = false) Map<Long, String> rooms,
            @RequestParam(defaultValue = "1") int page) {
        CircuitFacts circuit = circuits.get(me.siteId(), circuitId).facts();
        HistoryHead head = new HistoryHead(circuit.name(), "circuits", "/circuits");
        return histories.show(
                me, head, AuditedThing.of(Circuit.class, circuitId).naming("roomId", rooms), page);
    }
}
