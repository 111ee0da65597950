package dapple.archive;

import dapple.people.FirstRun;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets nobody send large files except to an empty installation, which may take in a large backup. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class LargeUploads extends OncePerRequestFilter {
    /** Photos and certificates, and what is a little too large for them, which is refused with words. */
    private static final long USUAL_MOST_BYTES = 17L << 20;

    private final FirstRun firstRun;

    LargeUploads(FirstRun firstRun) {
        this.firstRun = firstRun;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (isTooLarge(request) && !isRestore(request)) {
            response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
        } else {
            chain.doFilter(request, response);
        }
    }

    /** Of unknown length counts as too large. */
    private static boolean isTooLarge(HttpServletRequest request) {
        boolean isUnknown = request.getHeader(HttpHeaders.TRANSFER_ENCODING) != null;
        return isUnknown || request.getContentLengthLong() > USUAL_MOST_BYTES;
    }

    private boolean isRestore(HttpServletRequest request) {
        return request.getRequestURI().equals(RestoreController.PATH) && firstRun.isPending();
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return Optional.ofNullable(request.getContentType())
                .filter(type -> type.toLowerCase(Locale.ROOT).startsWith("multipart/"))
                .isEmpty();
    }
}
