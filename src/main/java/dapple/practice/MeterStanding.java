package dapple.practice;

import dapple.meter.CalibrationDue;
import dapple.meter.MeterFacts;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How the meters of a site stand: what was last told and checked of each. */
public record MeterStanding(
        Map<Long, MeterEventFacts> whereabouts,
        Map<Long, List<MeterCheckFacts>> newestChecks,
        Map<Long, ReferenceLampFacts> lamps,
        Map<Long, SeemsChanged> changes,
        Doubts doubts,
        Instant now,
        ZoneId zone) {
    /** From how many days after the last on a check by the reference lamp is due again (common practice, no source). */
    static final int LAMP_DAYS = 7;

    /** What who reads with a meter should know, gravest first; nothing: it is as it should be. */
    public List<MeterNotice> notices(MeterFacts meter) {
        List<MeterNotice> found = new ArrayList<>();
        away(meter.id()).ifPresent(found::add);
        doubts.open(meter.id()).map(this::dropped).ifPresent(found::add);
        failed(meter.id()).ifPresent(found::add);
        Optional.ofNullable(changes.get(meter.id()))
                .map(change -> change.notice(zone))
                .ifPresent(found::add);
        calibration(meter).ifPresent(found::add);
        if (meter.borrowed()) {
            found.add(new MeterNotice(MeterNotice.Kind.ON_LOAN, meter.borrowedUntil()));
        }
        return found;
    }

    private Optional<MeterNotice> away(long meterId) {
        return Optional.ofNullable(whereabouts.get(meterId))
                .flatMap(event -> event.kind().notice().map(kind -> new MeterNotice(kind, day(event.at()))));
    }

    /** Whether it is lost, lent or broken. */
    public boolean isAway(MeterFacts meter) {
        return away(meter.id()).isPresent();
    }

    private MeterNotice dropped(Doubt doubt) {
        MeterNotice.Kind kind = doubt.isCondemned() ? MeterNotice.Kind.CONDEMNED : MeterNotice.Kind.DROPPED;
        return new MeterNotice(kind, day(doubt.droppedAt()));
    }

    /** A check that failed after a drop says so with the drop. */
    private Optional<MeterNotice> failed(long meterId) {
        if (doubts.open(meterId).isPresent()) {
            return Optional.empty();
        }
        return newestChecks.getOrDefault(meterId, List.of()).stream()
                .filter(check -> !check.good())
                .findFirst()
                .map(check -> new MeterNotice(MeterNotice.Kind.CHECK_FAILED, day(check.at())));
    }

    private Optional<MeterNotice> calibration(MeterFacts meter) {
        return switch (meter.due(now, zone)) {
            case OVERDUE -> Optional.of(new MeterNotice(MeterNotice.Kind.PAST_DUE, meter.calibrationDue()));
            case NEVER -> Optional.of(new MeterNotice(MeterNotice.Kind.NEVER_CALIBRATED, Optional.empty()));
            case LATER, SOON -> Optional.empty();
        };
    }

    /** What is due with these meters, the most pressing first. */
    List<PracticeDue> due(List<MeterFacts> meters) {
        return meters.stream()
                .flatMap(meter -> due(meter).stream())
                .sorted(Comparator.comparing(PracticeDue::kind))
                .toList();
    }

    /** Nothing is due with a meter that is away. */
    List<PracticeDue> due(MeterFacts meter) {
        List<PracticeDue> found = new ArrayList<>();
        if (isAway(meter)) {
            return found;
        }
        doubts.open(meter.id())
                .ifPresent(doubt -> found.add(due(meter, PracticeDue.Kind.CHECK_AFTER_DROP, day(doubt.droppedAt()))));
        Optional.ofNullable(changes.get(meter.id()))
                .ifPresent(change -> found.add(due(meter, PracticeDue.Kind.AGREEMENT, day(change.since()))));
        CalibrationDue calibration = meter.due(now, zone);
        if (calibration != CalibrationDue.LATER) {
            found.add(due(meter, PracticeDue.Kind.CALIBRATION, meter.calibrationDue()));
        }
        lampDue(meter.id())
                .filter(day -> !day.isAfter(LocalDate.ofInstant(now, zone)))
                .ifPresent(day -> found.add(due(meter, PracticeDue.Kind.REFERENCE_LAMP, Optional.of(day))));
        return found;
    }

    /** When the next check by the reference lamp is due; none: there is no such lamp. */
    Optional<LocalDate> lampDue(long meterId) {
        return Optional.ofNullable(lamps.get(meterId)).map(lamp -> {
            Instant last = newestChecks.getOrDefault(meterId, List.of()).stream()
                    .filter(check -> check.lampId().equals(Optional.of(lamp.id())))
                    .map(MeterCheckFacts::at)
                    .findFirst()
                    .orElse(lamp.firstAt());
            return LocalDate.ofInstant(last, zone).plusDays(LAMP_DAYS);
        });
    }

    private static PracticeDue due(MeterFacts meter, PracticeDue.Kind kind, Optional<LocalDate> since) {
        return new PracticeDue(meter.id(), meter.code(), kind, since);
    }

    private Optional<LocalDate> day(Instant at) {
        return Optional.of(LocalDate.ofInstant(at, zone));
    }
}
