package dapple.review;

import dapple.reading.ReadingLogged;
import dapple.reading.ReadingsImported;
import dapple.reading.VisitRejudged;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Readings over the ceiling that interrupt everybody at a site until somebody has seen them. */
@Service
public class Alarms {
    private final AlarmRepository alarms;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Alarms(AlarmRepository alarms, ApplicationEventPublisher events, Clock clock) {
        this.alarms = alarms;
        this.events = events;
        this.clock = clock;
    }

    /** In the transaction that stores the reading: no reading over the ceiling without its alarm. */
    @EventListener
    @Transactional
    public void raise(ReadingLogged logged) {
        alarms.harm(logged.readingId()).ifPresent(this::raise);
    }

    /** A late calibration or target may put over the ceiling what was not; what has been read again since alarms nobody. */
    @EventListener
    @Transactional
    public void raise(VisitRejudged rejudged) {
        alarms.presentHarms(rejudged.visitId()).forEach(this::raise);
    }

    /** Of what was taken in from sheets, only what nobody has read again since. */
    @EventListener
    @Transactional
    public void raise(ReadingsImported imported) {
        alarms.presentHarmsAtSite(imported.siteId()).forEach(this::raise);
    }

    private void raise(AlarmRepository.Harm harm) {
        alarms.saveAndFlush(
                new Alarm(harm.siteId(), harm.enclosureId(), harm.pointId(), harm.readingId(), clock.instant()));
        events.publishEvent(new AlarmRaised(harm.siteId(), harm.readingId()));
    }

    /** What nobody has seen yet, oldest first. */
    @Transactional(readOnly = true)
    public List<AlarmFacts> unseen(long siteId) {
        return alarms.unseen(siteId);
    }

    /**
     * Notes that somebody has seen an alarm, and what was shown with it: all before it of the same enclosure. Who saw
     * each first stays on record.
     *
     * @return the enclosure that it is about
     */
    @Transactional
    public long see(long siteId, long alarmId, long personId) {
        Alarm alarm = alarms.findAtSite(siteId, alarmId).orElseThrow(NotFoundException::new);
        Instant now = clock.instant();
        alarm.see(personId, now);
        alarms.shownBefore(siteId, alarm.enclosureId(), alarmId).forEach(shown -> shown.see(personId, now));
        return alarm.enclosureId();
    }
}
