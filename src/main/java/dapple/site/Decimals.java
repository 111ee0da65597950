package dapple.site;

import java.beans.PropertyEditorSupport;
import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;

/**
 * Numbers as people type them: a comma is a decimal point, since many phones offer no other key. Nothing typed is no
 * number; whether there must be one the form says. What is no decimal number is refused, so that the form shows the text again as it was typed.
 */
@ControllerAdvice
class Decimals {
    @InitBinder
    void readDecimals(WebDataBinder binder) {
        binder.registerCustomEditor(BigDecimal.class, new FromText());
    }

    /** An editor rather than a converter: behind a converter that refuses, Spring would try its own reading. */
    private static final class FromText extends PropertyEditorSupport {
        private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,12}([.,][0-9]{0,12})?");

        @Override
        public void setAsText(String text) {
            String typed = text.strip();
            if (typed.isEmpty()) {
                setValue(null);
                return;
            }
            if (!DECIMAL.matcher(typed).matches()) {
                throw new IllegalArgumentException("not a decimal number");
            }
            setValue(new BigDecimal(typed.replace(',', '.')));
        }

        @Override
        public String getAsText() {
            return getValue() instanceof BigDecimal number ? number.toPlainString() : "";
        }
    }
}
