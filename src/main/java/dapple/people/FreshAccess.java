package dapple.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.Optional;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Reads the signed-in person anew at each request, so that a role taken away, an end date or a deactivation holds from
 * the next request on, whatever the session remembers.
 */
class FreshAccess extends OncePerRequestFilter {
    private final Accounts accounts;

    FreshAccess(Accounts accounts) {
        this.accounts = accounts;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication remembered = SecurityContextHolder.getContext().getAuthentication();
        if (remembered != null && remembered.getPrincipal() instanceof SignedIn person) {
            Optional<SignedIn> now = accounts.asOfNow(person.personId());
            now.ifPresentOrElse(FreshAccess::continueAs, () -> end(request));
        }
        chain.doFilter(request, response);
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return PublicPaths.isAsset(request.getRequestURI());
    }

    private static void continueAs(SignedIn person) {
        SecurityContextHolder.setContext(new SecurityContextImpl(PasswordSignIn.of(person)));
    }

    private static void end(HttpServletRequest request) {
        SecurityContextHolder.clearContext();
        HttpSession session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
    }
}
