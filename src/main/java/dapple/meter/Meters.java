package dapple.meter;

import dapple.light.quantity.Quantity;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The register of meters. */
@Service
public class Meters {
    private final MeterRepository meters;
    private final CalibrationRepository calibrations;
    private final MeterBudgetRepository budgets;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Meters(
            MeterRepository meters,
            CalibrationRepository calibrations,
            MeterBudgetRepository budgets,
            ApplicationEventPublisher events,
            Clock clock) {
        this.meters = meters;
        this.calibrations = calibrations;
        this.budgets = budgets;
        this.events = events;
        this.clock = clock;
    }

    /**
     * Adds a meter.
     *
     * @param resolution smallest step of its display, in the unit of the quantity
     */
    @Transactional
    public MeterFacts add(long siteId, String code, String description, Quantity quantity, double resolution) {
        return meters.save(new Meter(siteId, code, description, quantity, resolution))
                .facts();
    }

    @Transactional
    public CalibrationInForce calibrate(long siteId, long meterId, NewCalibration calibration, long personId) {
        get(siteId, meterId);
        CalibrationInForce recorded = calibrations
                .saveAndFlush(new Calibration(siteId, meterId, calibration, clock.instant(), personId))
                .inForce();
        events.publishEvent(new CalibrationRecorded(siteId, meterId, calibration.calibratedAt()));
        return recorded;
    }

    @Transactional(readOnly = true)
    public List<MeterFacts> inUse(long siteId) {
        return meters.inUse(siteId).stream().map(Meter::facts).toList();
    }

    @Transactional(readOnly = true)
    public MeterFacts get(long siteId, long meterId) {
        return meters.findAtSite(siteId, meterId).map(Meter::facts).orElseThrow(NotFoundException::new);
    }

    /** All meters that a site has or had, by id. */
    @Transactional(readOnly = true)
    public Map<Long, MeterFacts> byId(long siteId) {
        return meters.all(siteId).stream().map(Meter::facts).collect(Collectors.toMap(MeterFacts::id, meter -> meter));
    }

    /** The calibrations of all meters of a site that are in force at an instant, by meter. */
    @Transactional(readOnly = true)
    public Map<Long, CalibrationInForce> calibrationsAt(long siteId, Instant at) {
        return calibrations.inForceAt(siteId, at).stream()
                .collect(Collectors.toMap(Calibration::meterId, Calibration::inForce, (newest, older) -> newest));
    }

    /** When a calibration that holds came into force. */
    @Transactional(readOnly = true)
    public List<Instant> turns(long siteId) {
        return calibrations.turns(siteId);
    }

    /** The calibration of a meter that is in force at an instant, if it has been calibrated before. */
    @Transactional(readOnly = true)
    public Optional<CalibrationInForce> calibrationAt(long meterId, Instant at) {
        return calibrations.newestFirst(meterId, at, Limit.of(1)).stream()
                .findFirst()
                .map(Calibration::inForce);
    }

    /** What the uncertainty of a meter holds for repeats, as a standard uncertainty, a share of the reading; 0: nothing. */
    @Transactional(readOnly = true)
    public double statedRepeats(long siteId, long meterId) {
        return budgets.standing(siteId, meterId)
                .map(MeterBudget::facts)
                .map(BudgetFacts::repeatsShare)
                .orElse(0.0);
    }
}
