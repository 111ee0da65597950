package dapple.meter;

import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Clock;
import java.util.List;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The calibrations of meters: entered, and withdrawn where they are wrong, never edited. */
@Service
public class Calibrations {
    private final Meters meters;
    private final CalibrationRepository calibrations;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Calibrations(Meters meters, CalibrationRepository calibrations, ApplicationEventPublisher events, Clock clock) {
        this.meters = meters;
        this.calibrations = calibrations;
        this.events = events;
        this.clock = clock;
    }

    /** All of a meter, newest first, those that were withdrawn among them. */
    @Transactional(readOnly = true)
    public List<CalibrationDetails> of(long siteId, long meterId) {
        return calibrations.ofMeter(siteId, meterId).stream()
                .map(Calibration::details)
                .toList();
    }

    @Transactional(readOnly = true)
    public CalibrationDetails get(long siteId, long meterId, long calibrationId) {
        return find(siteId, meterId, calibrationId).details();
    }

    /**
     * Enters a calibration.
     *
     * @throws TakenException if one of this meter holds from the same instant on
     */
    @Transactional
    public void enter(long siteId, long meterId, NewCalibration entered, long personId) {
        if (calibrations.isTaken(meterId, entered.calibratedAt())) {
            throw new TakenException("a calibration of this meter holds from this instant on");
        }
        try {
            meters.calibrate(siteId, meterId, entered, personId);
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("a calibration of this meter holds from this instant on by now");
        }
    }

    /**
     * Withdraws a wrong calibration: it stays on record, and readings since are judged as if it had not been.
     *
     * @throws ConflictException if it is withdrawn already
     */
    @Transactional
    public void withdraw(long siteId, long meterId, long calibrationId, Reason reason) {
        Calibration wrong = find(siteId, meterId, calibrationId);
        if (calibrations.withdraw(calibrationId, clock.instant(), reason.personId(), reason.text()) == 0) {
            throw new ConflictException("the calibration is withdrawn already");
        }
        events.publishEvent(new CalibrationRecorded(siteId, meterId, wrong.calibratedAt()));
    }

    private Calibration find(long siteId, long meterId, long calibrationId) {
        return calibrations.findOfMeter(siteId, meterId, calibrationId).orElseThrow(NotFoundException::new);
    }

    /** Who withdraws, and why. */
    record Reason(long personId, String text) {}
}
