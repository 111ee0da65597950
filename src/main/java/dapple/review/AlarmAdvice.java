package dapple.review;

import dapple.people.SignedIn;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.thymeleaf.context.LazyContextVariable;

/** The banner that every page of a site shows; asked for only when a page is written. */
@ControllerAdvice
class AlarmAdvice {
    private final Alarms alarms;

    AlarmAdvice(Alarms alarms) {
        this.alarms = alarms;
    }

    @ModelAttribute("alarms")
    LazyContextVariable<List<AlarmFacts>> alarms(@AuthenticationPrincipal @Nullable SignedIn me) {
        return new LazyContextVariable<>() {
            @Override
            protected List<AlarmFacts> loadValue() {
                return me == null ? List.of() : alarms.unseen(me.siteId());
            }
        };
    }
}
