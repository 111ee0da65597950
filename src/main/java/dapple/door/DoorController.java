package dapple.door;

import dapple.door.DoorCode.Typed;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Opens the enclosure behind a door whose code was scanned or typed. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
@RequestMapping("/d")
class DoorController {
    private final Doors doors;
    private final Enclosures enclosures;

    DoorController(Doors doors, Enclosures enclosures) {
        this.doors = doors;
        this.enclosures = enclosures;
    }

    /** What was typed. */
    @GetMapping
    String typed(@RequestParam(defaultValue = "") String code, HttpServletRequest request, Model model) {
        if (code.isBlank()) {
            return "door/again";
        }
        return DoorCode.typed(code) instanceof Typed.Right right
                ? onward("/d/" + right.code().text(), request)
                : again(code, model);
    }

    /** What a label says. */
    @GetMapping("/{doorCode}")
    String scanned(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable String doorCode,
            HttpServletRequest request,
            Model model) {
        if (!(DoorCode.typed(doorCode) instanceof Typed.Right right)) {
            return again(doorCode, model);
        }
        DoorFacts door = doors.find(me.siteId(), right.code()).orElseThrow(NotFoundException::new);
        EnclosureFacts enclosure = enclosures.get(me.siteId(), door.enclosureId());
        String path = path(me, enclosure);
        if (door.counts()) {
            return onward(path, request);
        }
        model.addAttribute("door", door);
        model.addAttribute("enclosure", enclosure);
        model.addAttribute("path", path);
        return "door/replaced";
    }

    /** On a phone for those who read there; in an enclosure out of use nobody does. */
    private static String path(SignedIn me, EnclosureFacts enclosure) {
        boolean isRead = me.may(Action.LOG_READINGS) && enclosure.isInUse();
        return "/enclosures/" + enclosure.id() + (isRead ? "/on-phone" : "");
    }

    private static String onward(String path, HttpServletRequest request) {
        request.setAttribute(View.RESPONSE_STATUS_ATTRIBUTE, HttpStatus.SEE_OTHER);
        return "redirect:" + path;
    }

    private static String again(String typed, Model model) {
        if (DoorCode.typed(typed) instanceof Typed.Wrong wrong) {
            model.addAttribute("slip", wrong.slip());
        }
        model.addAttribute("typed", typed);
        return "door/again";
    }
}
