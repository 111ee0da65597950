package dapple.draft;

import dapple.light.quantity.Check;
import dapple.rig.CoverFacts;
import dapple.rig.FittingFacts;
import dapple.rig.FurnitureFacts;
import dapple.rig.Rig;
import dapple.rig.Span;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a draft hangs and puts in an enclosure; a lamp that the site has hangs once. */
public record DraftRig(List<DraftLamp> lamps, List<DraftCover> covers, List<DraftFurniture> furniture) {
    /** Parts of each kind at most (a definition of ours). */
    public static final int MOST = 40;

    public DraftRig {
        lamps = List.copyOf(lamps);
        covers = List.copyOf(covers);
        furniture = List.copyOf(furniture);
        Check.within("number of lamps", lamps.size(), 0, MOST, "");
        Check.within("number of covers", covers.size(), 0, MOST, "");
        Check.within("number of pieces of furniture", furniture.size(), 0, MOST, "");
        if (stockIds(lamps).distinct().count() < stockIds(lamps).count()) {
            throw new IllegalArgumentException("a lamp must hang once in a draft");
        }
    }

    private static Stream<Long> stockIds(List<DraftLamp> lamps) {
        return lamps.stream()
                .map(DraftLamp::lamp)
                .filter(LampPick.Stock.class::isInstance)
                .map(pick -> ((LampPick.Stock) pick).lampId());
    }

    public static DraftRig empty() {
        return new DraftRig(List.of(), List.of(), List.of());
    }

    /** What hangs and stands now, as a draft to begin with. */
    public static DraftRig of(Rig rig) {
        return new DraftRig(
                rig.fittings().stream()
                        .map(fitting -> new DraftLamp(
                                Optional.of(fitting.id()),
                                new LampPick.Stock(fitting.lamp().id()),
                                fitting.hanging()))
                        .toList(),
                rig.covers().stream()
                        .map(facts -> new DraftCover(Optional.of(facts.id()), facts.cover()))
                        .toList(),
                rig.furniture().stream()
                        .map(facts -> new DraftFurniture(Optional.of(facts.id()), facts.furniture()))
                        .toList());
    }

    /**
     * The rig that it would be, for everything that looks at installed ones.
     *
     * @param at when it would begin
     */
    public Rig rig(long enclosureId, Stock stock, Instant at) {
        Span span = Span.thought(at);
        List<FittingFacts> fittings = new ArrayList<>();
        for (DraftLamp lamp : lamps) {
            fittings.add(new FittingFacts(
                    lamp.fittingId().orElse(0L),
                    enclosureId,
                    stock.lamp(lamp.lamp(), fittings.size()),
                    lamp.hanging(),
                    Optional.empty(),
                    span));
        }
        return new Rig(
                enclosureId,
                Optional.empty(),
                fittings,
                covers.stream()
                        .map(one -> new CoverFacts(one.coverId().orElse(0L), enclosureId, one.cover(), span))
                        .toList(),
                furniture.stream()
                        .map(one ->
                                new FurnitureFacts(one.furnitureId().orElse(0L), enclosureId, one.furniture(), span))
                        .toList());
    }
}
