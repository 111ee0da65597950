package dapple.enclosure;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.validation.Valid;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The rooms of a site with their enclosures; a room is entered here. */
@Controller
@RequestMapping("/rooms")
class RoomsController {
    private final RoomArranging rooms;

    RoomsController(RoomArranging rooms) {
        this.rooms = rooms;
    }

    @GetMapping
    @Allowed(Action.SEE_ENCLOSURES)
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("rows", rooms.all(me.siteId()));
        return "enclosure/rooms";
    }

    @GetMapping("/new")
    @Allowed(Action.ARRANGE_ENCLOSURES)
    String fresh(@AuthenticationPrincipal SignedIn me, Model model) {
        int last = rooms.rooms(me.siteId()).stream()
                .mapToInt(RoomFacts::walkingOrder)
                .max()
                .orElse(0);
        model.addAttribute("form", RoomForm.empty(last + 1));
        return "enclosure/room-new";
    }

    @PostMapping("/new")
    @Allowed(Action.ARRANGE_ENCLOSURES)
    String add(
            @AuthenticationPrincipal SignedIn me, @Valid @ModelAttribute("form") RoomForm form, BindingResult errors) {
        if (errors.hasErrors()) {
            return "enclosure/room-new";
        }
        try {
            rooms.add(me.siteId(), form.change());
            return "redirect:/rooms";
        } catch (TakenException taken) {
            errors.rejectValue("name", "room.name.taken");
            return "enclosure/room-new";
        }
    }
}
