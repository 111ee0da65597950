package dapple.site;

import java.beans.PropertyEditorSupport;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAccessor;
import java.util.function.Function;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;

/** Days and local times as a browser's own fields send them (ISO 8601). Nothing typed is no time. */
@ControllerAdvice
class LocalTimes {
    @InitBinder
    void readTimes(WebDataBinder binder) {
        binder.registerCustomEditor(
                LocalDateTime.class,
                new FromText(text -> LocalDateTime.parse(text.replace(' ', 'T')).truncatedTo(ChronoUnit.MINUTES)));
        binder.registerCustomEditor(LocalDate.class, new FromText(LocalDate::parse));
        binder.registerCustomEditor(
                LocalTime.class, new FromText(text -> LocalTime.parse(text).truncatedTo(ChronoUnit.MINUTES)));
    }

    private static final class FromText extends PropertyEditorSupport {
        private final Function<String, TemporalAccessor> parser;

        FromText(Function<String, TemporalAccessor> parser) {
            this.parser = parser;
        }

        /** A parser's DateTimeException is turned into a message of the form by Spring only as an IllegalArgumentException. */
        @Override
        public void setAsText(String text) {
            String typed = text.strip();
            try {
                setValue(typed.isEmpty() ? null : parser.apply(typed));
            } catch (DateTimeException notATime) {
                throw new IllegalArgumentException("not a time", notATime);
            }
        }

        @Override
        public String getAsText() {
            return getValue() == null ? "" : getValue().toString();
        }
    }
}
