package dapple.people;

import jakarta.servlet.http.HttpServletRequest;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.web.csrf.CsrfToken;
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

    /**
     * Makes the token of a page's forms before the page is written: once its first part is sent, a session for the token
     * can no longer be begun. Programs get no session.
     */
    @ModelAttribute
    void makeTokenOfForms(HttpServletRequest request) {
        boolean isPage = !request.getRequestURI().startsWith("/api/");
        if (isPage && request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token) {
            token.getToken();
        }
    }
}
