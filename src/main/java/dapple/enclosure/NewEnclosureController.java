package dapple.enclosure;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
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

/** Enters an enclosure in a room. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/rooms/{roomId}/enclosures/new")
class NewEnclosureController {
    private final RoomArranging rooms;
    private final EnclosureArranging enclosures;

    NewEnclosureController(RoomArranging rooms, EnclosureArranging enclosures) {
        this.rooms = rooms;
        this.enclosures = enclosures;
    }

    @ModelAttribute("room")
    RoomFacts room(@AuthenticationPrincipal SignedIn me, @PathVariable long roomId) {
        return rooms.get(me.siteId(), roomId);
    }

    @ModelAttribute("rooms")
    List<RoomFacts> rooms(@AuthenticationPrincipal SignedIn me) {
        return rooms.rooms(me.siteId());
    }

    @GetMapping
    String fresh(@AuthenticationPrincipal SignedIn me, @PathVariable long roomId, Model model) {
        model.addAttribute("form", EnclosureForm.empty(roomId, enclosures.nextInWalk(me.siteId(), roomId)));
        return "enclosure/new";
    }

    @PostMapping
    String add(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") EnclosureForm form,
            BindingResult errors) {
        if (!errors.hasErrors()) {
            form.check(errors);
        }
        if (errors.hasErrors()) {
            return "enclosure/new";
        }
        try {
            return "redirect:/enclosures/" + enclosures.add(me.siteId(), form.change()) + "/edit";
        } catch (TakenException taken) {
            errors.rejectValue("code", "enclosure.code.taken");
            return "enclosure/new";
        }
    }
}
