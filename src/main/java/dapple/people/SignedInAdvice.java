package dapple.people;

import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** The signed-in person and the time zone of their site, for every page. */
@ControllerAdvice
class SignedInAdvice {
    @ModelAttribute("me")
    @Nullable
    SignedIn me(@AuthenticationPrincipal(errorOnInvalidType = false) @Nullable SignedIn person) {
        return person;
    }

    @ModelAttribute("zone")
    ZoneId zone(@AuthenticationPrincipal(errorOnInvalidType = false) @Nullable SignedIn person) {
        return person == null ? ZoneOffset.UTC : person.zone();
    }
}
