package dapple.review;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What was decided about an enclosure and what alarmed at an instant. */
@Service
public class ReviewRecords {
    /** As many as are shown; what is older is on the enclosure's page of the review. */
    public static final int SHOWN = 10;

    private final DecisionRepository decisions;
    private final AlarmRepository alarms;

    ReviewRecords(DecisionRepository decisions, AlarmRepository alarms) {
        this.decisions = decisions;
        this.alarms = alarms;
    }

    /**
     * The decisions that had been made at an instant and whose day had not passed, newest first.
     *
     * @param day that of the instant at the site
     */
    @Transactional(readOnly = true)
    public List<DecisionFacts> decisions(long siteId, long enclosureId, Instant at, LocalDate day) {
        return decisions.standing(siteId, enclosureId, at, day, Limit.of(SHOWN)).stream()
                .map(Decision::facts)
                .toList();
    }

    /** What was decided at a site over [from, to), oldest first. */
    @Transactional(readOnly = true)
    public List<DecisionFacts> decisions(long siteId, Instant from, Instant to) {
        return decisions.between(siteId, from, to).stream().map(Decision::facts).toList();
    }

    /** The alarms that nobody had seen at an instant, newest first. */
    @Transactional(readOnly = true)
    public List<AlarmOnRecord> alarms(long siteId, long enclosureId, Instant at) {
        return alarms.unseenAt(siteId, enclosureId, at, Limit.of(SHOWN));
    }
}
