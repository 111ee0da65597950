package dapple.people;

import jakarta.validation.Valid;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One's own keys for programs: their names and dates, a new one, one revoked. */
@Controller
@Allowed(Action.KEEP_OWN_ACCOUNT)
@RequestMapping("/account/keys")
class KeyController {
    private final Keys keys;

    KeyController(Keys keys) {
        this.keys = keys;
    }

    @ModelAttribute("keys")
    List<KeyFacts> keys(@AuthenticationPrincipal SignedIn me) {
        return keys.of(owner(me));
    }

    @GetMapping
    String page(Model model) {
        model.addAttribute("form", KeyForm.empty());
        return "people/keys";
    }

    @PostMapping
    String make(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") KeyForm form,
            BindingResult errors,
            RedirectAttributes shown) {
        if (!errors.hasErrors() && keys.isFull(owner(me))) {
            errors.rejectValue("keyName", "people.keys.full");
        }
        if (errors.hasErrors()) {
            return "people/keys";
        }
        shown.addFlashAttribute("newKey", keys.make(owner(me), form.keyName().strip()));
        return "redirect:/account/keys";
    }

    @PostMapping("/{keyId}/revocation")
    String revoke(@AuthenticationPrincipal SignedIn me, @PathVariable long keyId) {
        keys.revoke(owner(me), keyId);
        return "redirect:/account/keys";
    }

    private static KeyOwner owner(SignedIn me) {
        return new KeyOwner(me.siteId(), me.personId());
    }
}
