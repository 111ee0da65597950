package dapple.check;

import dapple.enclosure.InnerSize;
import dapple.lamp.LampFacts;
import dapple.lamp.LampShape;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Source;
import dapple.light.survey.Crew;
import dapple.light.survey.FoundZones.OnSurface;
import dapple.light.survey.FoundZones.Overlap;
import dapple.light.survey.Needs;
import dapple.light.survey.ZoneSurvey;
import dapple.light.zone.Lattice;
import dapple.light.zone.ZoneTarget;
import dapple.prediction.SpeciesNeed;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Two spots whose ultraviolet falls on one place: there it adds up. Tubes are meant to overlap. */
final class SpotsRule {
    /** The share of the smaller patch that may lie in both: ours, no source. */
    static final double MOST_SHARED = 0.25;

    private static final ZoneSurvey.Known NOWHERE =
            new ZoneSurvey.Known(new Lattice(new Vec(0, 0, 0), 1, 1, 1, 1), index -> 0);

    private final Case seen;

    private SpotsRule(Case seen) {
        this.seen = seen;
    }

    static Checked of(Case seen) {
        return new SpotsRule(seen).checked();
    }

    /** Whether a lamp throws a beam. */
    static boolean isBeam(Lamp lamp) {
        return lamp.source() instanceof Source.Spot || lamp.source() instanceof Source.Face;
    }

    private Checked checked() {
        long hung = seen.scene().rig().rig().fittings().stream()
                .filter(fitting -> isUltravioletSpot(fitting.lamp()))
                .count();
        List<Lamp> spots = seen.rig().scene().lamps().stream()
                .filter(SpotsRule::isBeam)
                .filter(lamp -> lamp.outputs().stream().anyMatch(output -> output.quantity() == Quantity.UV_INDEX))
                .toList();
        if (hung < 2 && spots.size() < 2) {
            return Checked.holds(TradeCheck.SPOTS, "few");
        }
        if (seen.light().zones().isEmpty()) {
            return ZoneRules.withoutZones(seen, TradeCheck.SPOTS);
        }
        if (spots.size() < hung) {
            return Checked.unknown(TradeCheck.SPOTS, "not-predicted", seen.missing(Quantity.UV_INDEX));
        }
        return largest(spots)
                .map(this::checked)
                .orElseGet(() -> Checked.holds(TradeCheck.SPOTS, "apart").by(0));
    }

    private static boolean isUltravioletSpot(LampFacts lamp) {
        return lamp.model().lampClass().emitsUltraviolet()
                && lamp.model()
                        .shape()
                        .filter(shape -> shape instanceof LampShape.Spot || shape instanceof LampShape.Measured)
                        .isPresent();
    }

    private Checked checked(Overlap overlap) {
        String share = seen.formats().percent(overlap.share());
        Checked found = overlap.overlap()
                ? Checked.fails(TradeCheck.SPOTS, "overlap", overlap.one(), overlap.other(), share)
                : Checked.holds(TradeCheck.SPOTS, "little", overlap.one(), overlap.other(), share);
        return found.by(overlap.share());
    }

    private Optional<Overlap> largest(List<Lamp> spots) {
        return seen.scene()
                .size()
                .flatMap(
                        size -> seen.scene().shown().flatMap(SpeciesNeed::zones).map(target -> needs(size, target)))
                .flatMap(needs -> overlaps(spots, needs).stream().max(Comparator.comparingDouble(Overlap::share)));
    }

    private Needs needs(InnerSize size, ZoneTarget target) {
        return new Needs(
                Quantity.UV_INDEX,
                target,
                Optional.empty(),
                seen.rig().restingSurfaces(size),
                Optional.empty(),
                Map.of(),
                Optional.of(MOST_SHARED),
                seen.grain());
    }

    private List<Overlap> overlaps(List<Lamp> spots, Needs needs) {
        Scene whole = seen.rig().scene();
        Scene reduced = new Scene(whole.accuracy(), spots, whole.filters(), whole.solids());
        return ZoneSurvey.of(reduced, needs, NOWHERE, Crew.ofOne(() -> {}))
                .onSurface()
                .flatMap(OnSurface::overlaps)
                .orElse(List.of());
    }
}
