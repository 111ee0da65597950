package dapple.prediction;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;

/** What a posted form is answered with. */
record Exchange(BindingResult errors, Model model, HttpServletRequest request, HttpServletResponse response) {
    boolean isPreview() {
        return request.getRequestURI().endsWith("/preview");
    }

    /** The times by month as they were typed, whatever became of the form. */
    List<MonthFields.Row> typedMonths() {
        return new MonthFields(typed("monthOn"), typed("monthOff"), typed("monthDark"))
                .rows(TimerKind.MONTHLY.name().equals(timerKind()));
    }

    /** As it was typed. */
    String timerKind() {
        return Optional.ofNullable(request.getParameter("timerKind")).orElse("");
    }

    private List<String> typed(String field) {
        String[] typed = request.getParameterValues(field);
        return typed == null ? List.of() : List.of(typed);
    }
}
