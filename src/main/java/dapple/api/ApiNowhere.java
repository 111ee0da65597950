package dapple.api;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.NoHandlerFoundException;

/** What no controller of the interface answers; what no page answers keeps its page. */
@ControllerAdvice
class ApiNowhere {
    @ExceptionHandler
    ResponseEntity<ProblemDetail> nothingHere(HttpServletRequest request, NoHandlerFoundException cause)
            throws NoHandlerFoundException {
        if (!isApi(request)) {
            throw cause;
        }
        return ApiProblems.answer(Problem.of(404, "Not found", "There is nothing at this address."));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> otherMethod(HttpServletRequest request, HttpRequestMethodNotSupportedException cause)
            throws HttpRequestMethodNotSupportedException {
        if (!isApi(request)) {
            throw cause;
        }
        return ApiProblems.answer(Problem.of(405, "Method not allowed", "Post a document to this address."));
    }

    private static boolean isApi(HttpServletRequest request) {
        return request.getRequestURI().startsWith("/api/");
    }
}
