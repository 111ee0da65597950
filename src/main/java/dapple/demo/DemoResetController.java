package dapple.demo;

import dapple.people.Action;
import dapple.people.Allowed;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.util.Optional;
import org.springframework.context.annotation.Profile;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Begins the demo anew: everybody signs in again. */
@Controller
@Profile("demo")
@RequestMapping("/demo/reset")
@Allowed(Action.SETTLE)
class DemoResetController {
    private final DemoReset reset;

    DemoResetController(DemoReset reset) {
        this.reset = reset;
    }

    @GetMapping
    String page(Model model) {
        model.addAttribute("possible", reset.isPossible());
        return "demo/reset";
    }

    @PostMapping
    String reset(HttpServletRequest request) {
        reset.run();
        SecurityContextHolder.clearContext();
        Optional.ofNullable(request.getSession(false)).ifPresent(HttpSession::invalidate);
        return "redirect:/sign-in?out";
    }
}
