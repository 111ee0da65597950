package dapple.site;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What the layout shows on every page. */
@ControllerAdvice
class LayoutAdvice {
    static final String SCHEME_COOKIE = "scheme";

    private final Clock clock;
    private final Formats formats;

    LayoutAdvice(Clock clock, Formats formats) {
        this.clock = clock;
        this.formats = formats;
    }

    @ModelAttribute("formats")
    Formats formats() {
        return formats;
    }

    @ModelAttribute("scheme")
    Scheme scheme(@CookieValue(name = SCHEME_COOKIE, required = false) @Nullable String chosen) {
        return Scheme.night.name().equals(chosen) ? Scheme.night : Scheme.day;
    }

    /** What the page was asked with, so that its list as a file is asked with the same. */
    @ModelAttribute("askedWith")
    String askedWith(HttpServletRequest request) {
        return Optional.ofNullable(request.getQueryString())
                .map(query -> "?" + query)
                .orElse("");
    }

    @ModelAttribute("now")
    Instant now() {
        return clock.instant();
    }
}
