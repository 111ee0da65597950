package dapple.prediction;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;

/** What a posted form is answered with. */
record Exchange(BindingResult errors, Model model, HttpServletRequest request, HttpServletResponse response) {
    boolean isPreview() {
        return request.getRequestURI().endsWith("/preview");
    }
}
