package dapple.site;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;

/** Two people who changed one thing at once: the second gets the page for 409. */
@ControllerAdvice
class Conflicts {
    @ExceptionHandler(OptimisticLockingFailureException.class)
    void changedMeanwhile(HttpServletResponse response) throws IOException {
        response.sendError(HttpServletResponse.SC_CONFLICT);
    }
}
