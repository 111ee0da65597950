package dapple.prediction;

import dapple.people.SignedIn;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/** What the forms for all parts of a rig share. */
abstract class RigFormController {
    private final RigDesk desk;

    RigFormController(RigDesk desk) {
        this.desk = desk;
    }

    final RigDesk desk() {
        return desk;
    }

    @ModelAttribute("place")
    RigPlace place(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return desk.place(me, enclosureId);
    }
}
