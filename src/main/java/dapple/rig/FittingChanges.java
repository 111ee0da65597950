package dapple.rig;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.lamp.Lamps;
import dapple.rig.RigRefusedException.Reason;
import dapple.site.NotFoundException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.springframework.stereotype.Component;

/** Fits, swaps, moves, times lamps and takes them out, within the transaction of a change. */
@Component
class FittingChanges {
    private final FittingRepository fittings;
    private final CircuitRepository circuits;
    private final Lamps lamps;
    private final Enclosures enclosures;

    FittingChanges(FittingRepository fittings, CircuitRepository circuits, Lamps lamps, Enclosures enclosures) {
        this.fittings = fittings;
        this.circuits = circuits;
        this.lamps = lamps;
        this.enclosures = enclosures;
    }

    void make(RigChange change, LampStep step) {
        if (step instanceof LampStep.Fit fit) {
            fit(change, fit.lampId(), fit.hanging());
        } else if (step instanceof LampStep.Swap swap) {
            swap(change, swap);
        } else if (step instanceof LampStep.Move move) {
            Fitting before = ended(change, move.fittingId());
            begin(change, before.lampId(), before.hanging().movedTo(move.place(), move.mount()));
        } else if (step instanceof LampStep.SetTimer timed) {
            Fitting before = ended(change, timed.fittingId());
            begin(change, before.lampId(), before.hanging().timed(timed.timer(), timed.circuitId()));
        } else if (step instanceof LampStep.SetGear geared) {
            Fitting before = ended(change, geared.fittingId());
            begin(change, before.lampId(), before.hanging().with(geared.gear()));
        } else if (step instanceof LampStep.TakeOut takeOut) {
            ended(change, takeOut.fittingId());
        }
    }

    /** All lamps of several steps are locked in the order of their ids, so that two who work at once do not wait for each other. */
    void lockAll(RigChange change, List<RigStep> steps) {
        steps.stream()
                .flatMapToLong(step -> lampIds(change, step))
                .distinct()
                .sorted()
                .forEach(lampId -> lamps.lock(change.siteId(), lampId));
    }

    private LongStream lampIds(RigChange change, RigStep step) {
        if (step instanceof LampStep.Fit fit) {
            return LongStream.of(fit.lampId());
        }
        if (step instanceof LampStep.Swap swap) {
            return LongStream.of(find(change, swap.fittingId()).lampId(), swap.lampId());
        }
        if (step instanceof LampStep.Move move) {
            return LongStream.of(find(change, move.fittingId()).lampId());
        }
        if (step instanceof LampStep.SetTimer timed) {
            return LongStream.of(find(change, timed.fittingId()).lampId());
        }
        if (step instanceof LampStep.SetGear geared) {
            return LongStream.of(find(change, geared.fittingId()).lampId());
        }
        return step instanceof LampStep.TakeOut takeOut
                ? LongStream.of(find(change, takeOut.fittingId()).lampId())
                : LongStream.empty();
    }

    /** Both lamps are locked in the order of their ids, so that two who exchange lamps do not wait for each other. */
    private void swap(RigChange change, LampStep.Swap swap) {
        long before = find(change, swap.fittingId()).lampId();
        if (before == swap.lampId()) {
            throw new RigRefusedException(Reason.LAMP_UNCHANGED);
        }
        lamps.lock(change.siteId(), Math.min(before, swap.lampId()));
        lamps.lock(change.siteId(), Math.max(before, swap.lampId()));
        Hanging hanging = ended(change, swap.fittingId()).hanging();
        fit(change, swap.lampId(), swap.gear().map(hanging::with).orElse(hanging));
    }

    void fit(RigChange change, long lampId, Hanging hanging) {
        lamps.lock(change.siteId(), lampId);
        if (!lamps.get(change.siteId(), lampId).isInUse()) {
            throw new RigRefusedException(Reason.LAMP_RETIRED);
        }
        EnclosureFacts enclosure = enclosures.get(change.siteId(), change.enclosureId());
        Optional<Instant> closed =
                enclosure.retiredAt().filter(retired -> !change.at().isBefore(retired));
        if (closed.isPresent()) {
            throw new RigRefusedException(Reason.ENCLOSURE_OUT_OF_USE, closed.get());
        }
        requireFree(change, lampId);
        begin(change, lampId, hanging);
    }

    /** A fitting is open to its end, so that any other that reaches beyond its beginning would overlap. */
    private void requireFree(RigChange change, long lampId) {
        List<Fitting> others = fittings.beyond(lampId, change.at());
        if (others.isEmpty()) {
            return;
        }
        Fitting other = others.get(0);
        String where = enclosures.get(change.siteId(), other.enclosureId()).code();
        if (other.fromAt().isAfter(change.at())) {
            throw new RigRefusedException(Reason.LAMP_FITTED_LATER, where, Optional.of(other.fromAt()));
        }
        Reason reason = other.toAt().isPresent() ? Reason.LAMP_HUNG : Reason.LAMP_HANGS;
        throw new RigRefusedException(reason, where, Optional.of(other.toAt().orElse(other.fromAt())));
    }

    /** The fitting as it was; it is written as ended before the lamp hangs again, for there may be one open at a time. */
    private Fitting ended(RigChange change, long fittingId) {
        Fitting fitting = find(change, fittingId);
        lamps.lock(change.siteId(), fitting.lampId());
        fitting.end(change);
        return fittings.saveAndFlush(fitting);
    }

    private Fitting find(RigChange change, long fittingId) {
        return fittings.find(change.siteId(), change.enclosureId(), fittingId).orElseThrow(NotFoundException::new);
    }

    private void begin(RigChange change, long lampId, Hanging hanging) {
        Optional<Circuit> circuit = hanging.circuitId()
                .map(id -> circuits.findAtSite(change.siteId(), id).orElseThrow(NotFoundException::new));
        fittings.saveAndFlush(new Fitting(change, lampId, hanging, circuit));
    }
}
