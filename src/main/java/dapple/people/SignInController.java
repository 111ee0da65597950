package dapple.people;

import dapple.site.Open;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The sign-in page; the demo's accounts stand on it in the demo profile alone. */
@Controller
class SignInController {
    private final boolean demo;

    SignInController(Environment environment) {
        this.demo = environment.acceptsProfiles(Profiles.of("demo"));
    }

    @Open
    @GetMapping("/sign-in")
    String page(Model model) {
        model.addAttribute("demo", demo);
        return "people/sign-in";
    }
}
