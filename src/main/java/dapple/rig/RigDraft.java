package dapple.rig;

import dapple.lamp.LampFacts;
import dapple.site.NotFoundException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** What a rig would be after a step; nothing is stored. */
public final class RigDraft {
    private final Map<Long, LampFacts> lamps;
    private final Span span;

    /**
     * A draft.
     *
     * @param lamps of the site, by id
     * @param at when the step would be made
     */
    public RigDraft(Map<Long, LampFacts> lamps, Instant at) {
        this.lamps = Map.copyOf(lamps);
        this.span = Span.thought(at);
    }

    /**
     * The rig after a step.
     *
     * @throws NotFoundException if the part or the lamp is not there
     */
    public Rig after(Rig rig, RigStep step) {
        if (step instanceof LampStep lamp) {
            return rig.withFittings(fittings(rig, lamp));
        }
        if (step instanceof CoverStep cover) {
            return rig.withCovers(covers(rig, cover));
        }
        return rig.withFurniture(furniture(rig, (FurnitureStep) step));
    }

    private List<FittingFacts> fittings(Rig rig, LampStep step) {
        if (step instanceof LampStep.Fit fit) {
            return plus(rig.fittings(), fitted(rig, fit));
        }
        if (step instanceof LampStep.Swap swap) {
            return changed(
                    rig.fittings(),
                    rig.fitting(swap.fittingId()),
                    before -> swap.gear()
                            .map(gear -> before.with(before.hanging().with(gear)))
                            .orElse(before)
                            .with(lamp(swap.lampId())));
        }
        if (step instanceof LampStep.Move move) {
            return changed(
                    rig.fittings(),
                    rig.fitting(move.fittingId()),
                    before -> before.with(before.hanging().movedTo(move.place(), move.mount())));
        }
        if (step instanceof LampStep.SetTimer timed) {
            return changed(
                    rig.fittings(),
                    rig.fitting(timed.fittingId()),
                    before -> before.with(before.hanging().timed(timed.timer(), timed.circuitId())));
        }
        if (step instanceof LampStep.SetGear geared) {
            return changed(
                    rig.fittings(),
                    rig.fitting(geared.fittingId()),
                    before -> before.with(before.hanging().with(geared.gear())));
        }
        return minus(rig.fittings(), rig.fitting(((LampStep.TakeOut) step).fittingId()));
    }

    private FittingFacts fitted(Rig rig, LampStep.Fit fit) {
        return new FittingFacts(0, rig.enclosureId(), lamp(fit.lampId()), fit.hanging(), Optional.empty(), span);
    }

    private List<CoverFacts> covers(Rig rig, CoverStep step) {
        if (step instanceof CoverStep.Put put) {
            return plus(rig.covers(), new CoverFacts(0, rig.enclosureId(), put.cover(), span));
        }
        if (step instanceof CoverStep.Replace replace) {
            return changed(
                    rig.covers(),
                    rig.cover(replace.coverId()),
                    before -> new CoverFacts(before.id(), before.enclosureId(), replace.cover(), span));
        }
        if (step instanceof CoverStep.SetLayers layered) {
            return changed(
                    rig.covers(),
                    rig.cover(layered.coverId()),
                    before -> new CoverFacts(
                            before.id(), before.enclosureId(), before.cover().withLayers(layered.layers()), span));
        }
        return minus(rig.covers(), rig.cover(((CoverStep.TakeOff) step).coverId()));
    }

    private List<FurnitureFacts> furniture(Rig rig, FurnitureStep step) {
        if (step instanceof FurnitureStep.Put put) {
            return plus(rig.furniture(), new FurnitureFacts(0, rig.enclosureId(), put.furniture(), span));
        }
        if (step instanceof FurnitureStep.Move move) {
            return changed(
                    rig.furniture(),
                    rig.furniture(move.furnitureId()),
                    before -> new FurnitureFacts(before.id(), before.enclosureId(), move.furniture(), span));
        }
        return minus(rig.furniture(), rig.furniture(((FurnitureStep.Remove) step).furnitureId()));
    }

    private LampFacts lamp(long lampId) {
        return Optional.ofNullable(lamps.get(lampId)).orElseThrow(NotFoundException::new);
    }

    private static <T> List<T> plus(List<T> parts, T added) {
        return Stream.concat(parts.stream(), Stream.of(added)).toList();
    }

    private static <T> List<T> minus(List<T> parts, T removed) {
        return parts.stream().filter(part -> !part.equals(removed)).toList();
    }

    private static <T> List<T> changed(List<T> parts, T before, UnaryOperator<T> change) {
        return parts.stream()
                .map(part -> part.equals(before) ? change.apply(part) : part)
                .toList();
    }
}
