package dapple.door;

import dapple.door.DoorCode.Typed;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.NotFoundException;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Gives a door a new code when its label was lost, taken or spoilt. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}/door")
class RenewalController {
    private static final String PAGE = "door/renewal";

    private final Doors doors;
    private final Enclosures enclosures;
    private final People people;

    RenewalController(Doors doors, Enclosures enclosures, People people) {
        this.doors = doors;
        this.enclosures = enclosures;
        this.people = people;
    }

    @ModelAttribute("enclosure")
    EnclosureFacts enclosure(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return enclosures.get(me.siteId(), enclosureId);
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        List<DoorFacts> all = doors.of(me.siteId(), enclosureId);
        String seen = all.stream()
                .filter(DoorFacts::counts)
                .map(door -> door.code().text())
                .findFirst()
                .orElse("");
        model.addAttribute("form", new RenewalForm(seen, ""));
        return show(me, all, model);
    }

    @PostMapping
    String renew(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @Valid @ModelAttribute("form") RenewalForm form,
            BindingResult errors,
            Model model) {
        if (errors.hasErrors()) {
            return show(me, doors.of(me.siteId(), enclosureId), model);
        }
        if (!(DoorCode.typed(Given.of(form.seen())) instanceof Typed.Right seen)) {
            throw new NotFoundException();
        }
        doors.renew(me.siteId(), enclosureId, seen.code(), form.reason().strip(), me.personId());
        return "redirect:/enclosures/" + enclosureId + "/door";
    }

    private String show(SignedIn me, List<DoorFacts> all, Model model) {
        model.addAttribute("all", all);
        model.addAttribute("names", people.names(me.siteId()));
        return PAGE;
    }
}
