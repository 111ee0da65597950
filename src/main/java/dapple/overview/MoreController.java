package dapple.overview;

import dapple.people.Action;
import dapple.people.Allowed;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** The pages that a phone's row of tabs has no room for. */
@Controller
@Allowed(Action.KEEP_OWN_ACCOUNT)
class MoreController {
    @GetMapping("/more")
    String page() {
        return "overview/more";
    }
}
