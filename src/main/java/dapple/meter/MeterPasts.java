package dapple.meter;

import dapple.light.metrology.UncertaintyBudget;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** All meters that a site has or had, with what their readings were corrected by over time. */
@Service
public class MeterPasts {
    private final MeterRepository meters;
    private final CalibrationRepository calibrations;
    private final MeterBudgetRepository budgets;

    MeterPasts(MeterRepository meters, CalibrationRepository calibrations, MeterBudgetRepository budgets) {
        this.meters = meters;
        this.calibrations = calibrations;
        this.budgets = budgets;
    }

    /** By meter. */
    @Transactional(readOnly = true)
    public Map<Long, MeterPast> of(long siteId) {
        Map<Long, NavigableMap<Instant, CalibrationInForce>> byMeter = new HashMap<>();
        for (Calibration one : calibrations.holding(siteId)) {
            byMeter.computeIfAbsent(one.meterId(), id -> new TreeMap<>()).put(one.calibratedAt(), one.inForce());
        }
        Map<Long, BudgetFacts> stated = budgets.standing(siteId).stream()
                .map(MeterBudget::facts)
                .collect(Collectors.toMap(BudgetFacts::meterId, Function.identity()));
        List<MeterFacts> all = meters.all(siteId).stream().map(Meter::facts).toList();
        return all.stream()
                .collect(Collectors.toMap(
                        MeterFacts::id,
                        meter -> new MeterPast(
                                meter,
                                byMeter.getOrDefault(meter.id(), new TreeMap<>()),
                                Optional.ofNullable(stated.get(meter.id())).map(budget -> combined(budget, meter)))));
    }

    private static UncertaintyBudget combined(BudgetFacts budget, MeterFacts meter) {
        return BudgetFacts.combined(budget.parts(), meter.uncertainty().resolution());
    }
}
