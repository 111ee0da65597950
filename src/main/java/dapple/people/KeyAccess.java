package dapple.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets a program in by the key in its request, and slows the guessing of keys. */
class KeyAccess extends OncePerRequestFilter {
    private static final String BEARER = "bearer ";
    private static final String WAIT_SECONDS = "60";

    private final Keys keys;
    private final SignInAttempts attempts;

    KeyAccess(Keys keys, SignInAttempts attempts) {
        this.keys = keys;
        this.attempts = attempts;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<String> key = key(request);
        String address = request.getRemoteAddr();
        if (key.isPresent() && !attempts.mayTryKey(address)) {
            response.setHeader(HttpHeaders.RETRY_AFTER, WAIT_SECONDS);
            refuse(response, 429, "Too many attempts", "Too many wrong keys came from this address. Wait a while.");
            return;
        }
        Optional<SignedIn> holder = key.flatMap(keys::holder);
        if (key.isPresent() && holder.isEmpty()) {
            challenge(response, "Bearer error=\"invalid_token\"", "This key is not known, or no longer good.");
            return;
        }
        holder.ifPresent(person -> {
            attempts.keySucceeded(address);
            SecurityContextHolder.setContext(new SecurityContextImpl(PasswordSignIn.of(person)));
        });
        chain.doFilter(request, response);
    }

    private static Optional<String> key(HttpServletRequest request) {
        return Optional.ofNullable(request.getHeader(HttpHeaders.AUTHORIZATION))
                .filter(header -> header.regionMatches(true, 0, BEARER, 0, BEARER.length()))
                .map(header -> header.substring(BEARER.length()).strip());
    }

    static void refuseNobody(HttpServletRequest request, HttpServletResponse response, Exception cause)
            throws IOException {
        challenge(response, "Bearer", "Send a key: Authorization: Bearer, then the key from the account page.");
    }

    private static void challenge(HttpServletResponse response, String challenge, String detail) throws IOException {
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, challenge);
        refuse(response, HttpServletResponse.SC_UNAUTHORIZED, "No valid key", detail);
    }

    static void refuseRole(HttpServletRequest request, HttpServletResponse response, Exception cause)
            throws IOException {
        refuse(response, HttpServletResponse.SC_FORBIDDEN, "Not for your role", "The key's owner may not do this.");
    }

    private static void refuse(HttpServletResponse response, int status, String title, String detail)
            throws IOException {
        response.setStatus(status);
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.getOutputStream()
                .write(("{\"type\":\"about:blank\",\"title\":\"" + title + "\",\"status\":" + status + ",\"detail\":\""
                                + detail + "\"}")
                        .getBytes(StandardCharsets.UTF_8));
    }
}
