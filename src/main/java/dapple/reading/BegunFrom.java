package dapple.reading;

import jakarta.servlet.http.HttpSession;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The walk of a round from which a visit was begun, so that its end leads back there. */
record BegunFrom(long planId, LocalDate dueOn) {
    /** None unless both are named. */
    static Optional<BegunFrom> of(@Nullable Long planId, @Nullable LocalDate dueOn) {
        return planId == null || dueOn == null ? Optional.empty() : Optional.of(new BegunFrom(planId, dueOn));
    }

    void keep(HttpSession session, UUID visitKey) {
        session.setAttribute(nameOf(visitKey), path());
    }

    /** The page of the walk that a visit was begun from, as far as this session knows. */
    static Optional<String> pathFor(HttpSession session, UUID visitKey) {
        return Optional.ofNullable((String) session.getAttribute(nameOf(visitKey)));
    }

    private String path() {
        return "/rounds/" + planId + "/walks/" + dueOn;
    }

    private static String nameOf(UUID visitKey) {
        return "visit.begun-from." + visitKey;
    }
}
