package dapple.people;

import jakarta.servlet.http.HttpSession;
import jakarta.validation.Valid;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

/** One's own account: password, the colours of this device, sign out. */
@Controller
@Allowed(Action.KEEP_OWN_ACCOUNT)
class AccountController {
    private final People people;
    private final SignedInElsewhere elsewhere;

    AccountController(People people, SignedInElsewhere elsewhere) {
        this.people = people;
        this.elsewhere = elsewhere;
    }

    @GetMapping("/account")
    String page(Model model) {
        model.addAttribute("form", PasswordForm.empty());
        return "people/account";
    }

    @PostMapping("/account")
    String changePassword(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") PasswordForm form,
            BindingResult errors,
            HttpSession session) {
        if (!errors.hasErrors() && !people.changePassword(me.personId(), form.oldPassword(), form.password())) {
            errors.rejectValue("oldPassword", "people.old-password.wrong");
        }
        if (errors.hasErrors()) {
            return "people/account";
        }
        elsewhere.endAllBut(session.getId(), me.signInName());
        return "redirect:/account?changed";
    }
}
