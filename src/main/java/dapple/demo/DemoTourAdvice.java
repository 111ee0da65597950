package dapple.demo;

import dapple.people.SignedIn;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells the pages of the demo how far somebody is on the tour: {@code ?tour=2} shows what is said of the second stop. */
@ControllerAdvice
@Profile("demo")
class DemoTourAdvice {
    private final DemoTour tour;

    DemoTourAdvice(DemoTour tour) {
        this.tour = tour;
    }

    @ModelAttribute("tour")
    DemoTourPlace tour(
            HttpServletRequest request,
            @AuthenticationPrincipal(errorOnInvalidType = false) @Nullable SignedIn person) {
        int number = number(request);
        boolean isShown = number > 0 || request.getRequestURI().equals("/tour");
        return new DemoTourPlace(isShown && person != null ? tour.of(person) : List.of(), number);
    }

    private static int number(HttpServletRequest request) {
        return Optional.ofNullable(request.getParameter("tour"))
                .filter(typed -> typed.matches("[1-9]"))
                .map(Integer::parseInt)
                .orElse(0);
    }
}
