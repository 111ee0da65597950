package dapple.site;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ResolvableType;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.validation.DataBinder;
import org.springframework.validation.Validator;
import org.springframework.web.bind.WebDataBinder;

/** Reads a form from a part of what was sent, by the same rules as a form that is sent alone. */
@Component
public class FormReading {
    private final Decimals decimals;
    private final LocalTimes times;
    private final Validator validator;

    FormReading(Decimals decimals, LocalTimes times, Validator validator) {
        this.decimals = decimals;
        this.times = times;
        this.validator = validator;
    }

    /** The form with what is wrong with it; its target is missing where a field cannot be read at all. */
    public BindingResult read(Class<?> form, Map<String, String> typed) {
        WebDataBinder binder = new WebDataBinder(null, "form");
        binder.setTargetType(ResolvableType.forClass(form));
        binder.setValidator(validator);
        decimals.readDecimals(binder);
        times.readTimes(binder);
        binder.construct(new Typed(typed));
        if (binder.getTarget() != null) {
            binder.validate();
        }
        return binder.getBindingResult();
    }

    private record Typed(Map<String, String> fields) implements DataBinder.ValueResolver {
        @Override
        public @Nullable Object resolveValue(String name, Class<?> type) {
            return fields.get(name);
        }

        @Override
        public Set<String> getNames() {
            return fields.keySet();
        }
    }
}
