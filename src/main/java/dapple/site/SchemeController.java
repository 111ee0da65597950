package dapple.site;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseCookie;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Day or night house: a person's choice for one device, kept in a cookie there. */
@Controller
class SchemeController {
    private static final Duration KEPT = Duration.ofDays(365);

    @Open
    @PostMapping("/scheme")
    ResponseEntity<Void> choose(@RequestParam(defaultValue = "day") Scheme scheme, HttpServletRequest request) {
        ResponseCookie cookie = ResponseCookie.from(LayoutAdvice.SCHEME_COOKIE, scheme.name())
                .path("/")
                .maxAge(KEPT)
                .httpOnly(true)
                .secure(request.isSecure())
                .sameSite("Lax")
                .build();
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.SET_COOKIE, cookie.toString())
                .header(HttpHeaders.LOCATION, "/")
                .build();
    }
}
