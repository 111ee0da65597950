package dapple.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Leads everyone to the first-run page until there is an administrator. */
class FirstRunFilter extends OncePerRequestFilter {
    private final FirstRun firstRun;

    FirstRunFilter(FirstRun firstRun) {
        this.firstRun = firstRun;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (firstRun.isPending()) {
            response.sendRedirect(FirstRunController.PATH);
        } else {
            chain.doFilter(request, response);
        }
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI();
        return path.equals(FirstRunController.PATH)
                || path.startsWith(FirstRunController.PATH + "/")
                || path.equals("/scheme")
                || path.startsWith("/actuator/")
                || PublicPaths.isAsset(path);
    }
}
