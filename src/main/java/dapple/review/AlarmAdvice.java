package dapple.review;

import dapple.people.SignedIn;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestHeader;
import org.thymeleaf.context.LazyContextVariable;

/** The banner that every page of a site shows; asked for only when a page is written. */
@ControllerAdvice
class AlarmAdvice {
    /** Set where a page that stands already asks for a part of another, to which no banner belongs. */
    private static final String PART_OF_PAGE = "HX-Request";

    private final Alarms alarms;

    AlarmAdvice(Alarms alarms) {
        this.alarms = alarms;
    }

    @ModelAttribute("alarms")
    LazyContextVariable<List<EnclosureAlarm>> alarms(
            @AuthenticationPrincipal @Nullable SignedIn me,
            @RequestHeader(name = PART_OF_PAGE, required = false) @Nullable String part) {
        return new LazyContextVariable<>() {
            @Override
            protected List<EnclosureAlarm> loadValue() {
                return me == null || part != null ? List.of() : EnclosureAlarm.of(alarms.unseen(me.siteId()));
            }
        };
    }
}
