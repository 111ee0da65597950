package dapple.demo;

import dapple.people.Action;
import dapple.people.Allowed;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** The stops of the tour of whoever is signed in. */
@Controller
@Profile("demo")
class DemoTourController {
    @GetMapping("/tour")
    @Allowed(Action.SEE_TODAY)
    String stops() {
        return "demo/tour";
    }
}
