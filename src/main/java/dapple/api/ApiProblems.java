package dapple.api;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;

/** Says to programs what went wrong, as RFC 9457 has it. */
@ControllerAdvice(basePackageClasses = ApiProblems.class)
class ApiProblems {
    private static final Logger LOG = LoggerFactory.getLogger(ApiProblems.class);
    private static final String RETRY_AFTER_SECONDS = "5";

    @ExceptionHandler
    ResponseEntity<ProblemDetail> refused(RefusedException refused) {
        return answer(refused.problem());
    }

    /** A mistake of the program's own. */
    @ExceptionHandler
    ResponseEntity<ProblemDetail> broken(RuntimeException cause) {
        LOG.error("a request of a program failed", cause);
        return answer(Problem.of(500, "Something broke", "The program has made a mistake; it is written to its log."));
    }

    static ResponseEntity<ProblemDetail> answer(Problem problem) {
        ProblemDetail body =
                ProblemDetail.forStatusAndDetail(HttpStatusCode.valueOf(problem.status()), problem.detail());
        body.setTitle(problem.title());
        problem.pointer().ifPresent(pointer -> body.setProperty("pointer", pointer));
        HttpHeaders headers = new HttpHeaders();
        headers.setContentType(MediaType.APPLICATION_PROBLEM_JSON);
        if (problem.status() == HttpStatus.SERVICE_UNAVAILABLE.value()) {
            headers.set(HttpHeaders.RETRY_AFTER, RETRY_AFTER_SECONDS);
        }
        return ResponseEntity.status(problem.status()).headers(headers).body(body);
    }
}
