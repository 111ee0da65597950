package dapple.demo;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.context.annotation.Profile;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** While the demo is reset there is nothing to look at: whoever asks is told to come again. */
@Component
@Profile("demo")
@Order(Ordered.HIGHEST_PRECEDENCE)
class DemoClosed extends OncePerRequestFilter {
    private static final String SECONDS = "20";

    private final DemoReset reset;

    DemoClosed(DemoReset reset) {
        this.reset = reset;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (reset.isRunning()) {
            response.setStatus(HttpServletResponse.SC_SERVICE_UNAVAILABLE);
            response.setHeader(HttpHeaders.RETRY_AFTER, SECONDS);
            response.setContentType("text/plain;charset=UTF-8");
            response.getWriter().print("The demo is being reset. Come again in half a minute.");
        } else {
            chain.doFilter(request, response);
        }
    }
}
