package dapple.site;

import java.beans.PropertyEditorSupport;
import java.math.BigDecimal;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;

/**
 * Numbers as people type them. Nothing typed is no number; whether there must be one the form says. What is no decimal
 * number is refused, so that the form shows the text again as it was typed.
 */
@ControllerAdvice
class Decimals {
    @InitBinder
    void readDecimals(WebDataBinder binder) {
        binder.registerCustomEditor(BigDecimal.class, new FromText());
    }

    /** An editor rather than a converter: behind a converter that refuses, Spring would try its own reading. */
    private static final class FromText extends PropertyEditorSupport {
        @Override
        public void setAsText(String text) {
            if (text.isBlank()) {
                setValue(null);
                return;
            }
            setValue(DecimalText.read(text).orElseThrow(() -> new IllegalArgumentException("not a decimal number")));
        }

        @Override
        public String getAsText() {
            return getValue() instanceof BigDecimal number ? number.toPlainString() : "";
        }
    }
}
