package dapple.people;

import dapple.site.Open;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

/** A new password against the code that an administrator has handed over. */
@Controller
@Open
class ResetController {
    private final People people;
    private final SignInAttempts attempts;
    private final SignedInElsewhere elsewhere;

    ResetController(People people, SignInAttempts attempts, SignedInElsewhere elsewhere) {
        this.people = people;
        this.attempts = attempts;
        this.elsewhere = elsewhere;
    }

    @GetMapping("/reset")
    String page(Model model) {
        model.addAttribute("form", ResetForm.empty());
        return "people/reset";
    }

    @PostMapping("/reset")
    String reset(@Valid @ModelAttribute("form") ResetForm form, BindingResult errors, HttpServletRequest request) {
        if (!errors.hasErrors() && !attempts.mayTry(form.signInName(), request.getRemoteAddr())) {
            errors.rejectValue("code", "people.wait");
        }
        if (!errors.hasErrors() && !people.resetPassword(form.signInName(), form.code(), form.password())) {
            errors.rejectValue("code", "people.reset-code.wrong");
        }
        if (errors.hasErrors()) {
            return "people/reset";
        }
        elsewhere.end(Accounts.normalised(form.signInName()));
        return "redirect:/sign-in?reset";
    }
}
