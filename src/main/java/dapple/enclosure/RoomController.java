package dapple.enclosure;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
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

/** One room: its name and where it comes in the walk. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/rooms/{roomId}")
class RoomController {
    private final RoomArranging rooms;

    RoomController(RoomArranging rooms) {
        this.rooms = rooms;
    }

    @ModelAttribute("room")
    RoomFacts room(@AuthenticationPrincipal SignedIn me, @PathVariable long roomId) {
        return rooms.get(me.siteId(), roomId);
    }

    @GetMapping
    String page(@ModelAttribute("room") RoomFacts room, Model model) {
        model.addAttribute("form", RoomForm.of(room));
        return "enclosure/room";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    String change(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long roomId,
            @Valid @ModelAttribute("form") RoomForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (errors.hasErrors()) {
            return "enclosure/room";
        }
        try {
            rooms.change(me.siteId(), roomId, form.versionSeen(), form.change());
            return "redirect:/rooms";
        } catch (TakenException taken) {
            errors.rejectValue("name", "room.name.taken");
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            RoomFacts now = rooms.get(me.siteId(), roomId);
            model.addAttribute("theirs", now);
            model.addAttribute("form", form.onVersion(now.version()));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return "enclosure/room";
    }
}
