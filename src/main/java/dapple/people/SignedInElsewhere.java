package dapple.people;

import java.util.Set;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;

/** Ends what a person has signed in to, so that a changed password shuts out whoever knew the one before. */
@Component
class SignedInElsewhere {
    private final FindByIndexNameSessionRepository<? extends Session> sessions;

    SignedInElsewhere(FindByIndexNameSessionRepository<? extends Session> sessions) {
        this.sessions = sessions;
    }

    void end(String signInName) {
        endAllBut("", signInName);
    }

    void endAllBut(String sessionId, String signInName) {
        Set<String> open = sessions.findByPrincipalName(signInName).keySet();
        open.stream().filter(id -> !id.equals(sessionId)).forEach(sessions::deleteById);
    }
}
