package dapple.check;

import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.light.survey.FoundZones;
import dapple.light.survey.FoundZones.ForBody;
import dapple.light.survey.FoundZones.OnSurface;
import dapple.light.zone.BaskingPatch;
import dapple.light.zone.Zone;
import dapple.prediction.LightInside.Zones;
import dapple.prediction.Predicted;
import dapple.prediction.SpeciesNeed;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the zones of the ultraviolet say: the ceiling, the shade, the patch. */
final class ZoneRules {
    private ZoneRules() {}

    /** Something in reach that has most of the UV index, and the most that it may have. */
    private record Most(double amount, double high, String where) {}

    static Checked ceiling(Case seen) {
        List<SpeciesNeed> without = seen.scene().needs().stream()
                .filter(need -> limits(need).isEmpty())
                .toList();
        Optional<Limits> strictest = seen.scene().needs().stream()
                .flatMap(need -> limits(need).stream())
                .min(Comparator.comparingDouble(Limits::ceiling));
        Optional<Most> most = most(seen);
        if (strictest.isEmpty()) {
            return Checked.unknown(TradeCheck.CEILING, "no-target");
        }
        if (most.isEmpty()) {
            return unpredicted(seen, TradeCheck.CEILING);
        }
        double ceiling = strictest.get().ceiling();
        String limit = seen.formats().limit(ceiling);
        String amount = seen.formats().uvi(most.get().amount());
        if (most.get().amount() >= ceiling) {
            return Checked.fails(
                            TradeCheck.CEILING,
                            "over",
                            amount,
                            limit,
                            most.get().where())
                    .by(most.get().amount());
        }
        if (most.get().high() >= ceiling) {
            return Checked.unknown(
                            TradeCheck.CEILING,
                            "may",
                            amount,
                            seen.formats().uvi(most.get().high()),
                            limit)
                    .by(most.get().high());
        }
        if (!seen.isWhole(Quantity.UV_INDEX)) {
            return Checked.unknown(TradeCheck.CEILING, "least", amount, seen.missing(Quantity.UV_INDEX));
        }
        return without.isEmpty()
                ? Checked.holds(TradeCheck.CEILING, "under", amount, limit)
                        .by(most.get().amount())
                : Checked.unknown(TradeCheck.CEILING, "some-target", names(without), amount);
    }

    private static Optional<Limits> limits(SpeciesNeed need) {
        return need.limits(Quantity.UV_INDEX).filter(Limits::hasCeiling);
    }

    private static String names(List<SpeciesNeed> needs) {
        return needs.stream().map(SpeciesNeed::scientificName).distinct().collect(Collectors.joining(", "));
    }

    /** Of the places in reach that were looked at, and of the points. */
    private static Optional<Most> most(Case seen) {
        Stream<Most> ofPoints = seen.scene().points().stream()
                .filter(point -> point.role() != PointRole.KEEPER)
                .flatMap(point -> seen.light().at(point, Quantity.UV_INDEX).stream()
                        .map(found -> new Most(found.amount(), found.interval().high(), point.code())));
        double factor = factor(seen);
        Stream<Most> ofZones = seen.light().zones().stream()
                .flatMap(zones -> zones.found().brightest().stream())
                .map(found -> new Most(found.amount(), found.amount() * factor, seen.place(found.place())));
        return Stream.concat(ofZones, ofPoints).max(Comparator.comparingDouble(Most::amount));
    }

    /** By what the prediction may be too low, as at the basking point. */
    private static double factor(Case seen) {
        return seen.scene()
                .baskingPoint()
                .flatMap(point -> seen.light().at(point, Quantity.UV_INDEX))
                .filter(found -> found.amount() > 0)
                .map(ZoneRules::factor)
                .orElse(1.0);
    }

    private static double factor(Predicted found) {
        return found.interval().high() / found.amount();
    }

    static Checked shade(Case seen) {
        if (seen.light().zones().isEmpty()) {
            return withoutZones(seen, TradeCheck.SHADE);
        }
        FoundZones found = seen.light().zones().map(Zones::found).orElseThrow();
        if (found.reachable() == 0) {
            return Checked.unknown(TradeCheck.SHADE, "unreachable");
        }
        double share = found.shares().getOrDefault(Zone.SHADE, 0.0);
        if (!(share > 0)) {
            return Checked.fails(TradeCheck.SHADE, "none", shadeLimit(seen)).by(0);
        }
        if (forBody(found).filter(body -> !body.wayOut()).isPresent()) {
            return Checked.fails(TradeCheck.SHADE, "no-room", seen.formats().percent(share), body(seen))
                    .by(share);
        }
        return seen.isWhole(Quantity.UV_INDEX)
                ? Checked.holds(TradeCheck.SHADE, "some", seen.formats().percent(share), shadeLimit(seen))
                        .by(share)
                : Checked.unknown(TradeCheck.SHADE, "least", seen.missing(Quantity.UV_INDEX));
    }

    private static String shadeLimit(Case seen) {
        return seen.scene()
                .shown()
                .flatMap(SpeciesNeed::zones)
                .map(target -> seen.formats().limit(target.shadeHigh()))
                .orElse("–");
    }

    private static Optional<ForBody> forBody(FoundZones found) {
        return found.onSurface().flatMap(OnSurface::patch).flatMap(FoundZones.Patch::body);
    }

    private static String body(Case seen) {
        return seen.scene().bodyMetres().map(seen::centimetres).orElse("–");
    }

    static Checked patch(Case seen) {
        if (seen.light().zones().isEmpty()) {
            return withoutZones(seen, TradeCheck.PATCH);
        }
        if (!seen.isWhole(Quantity.UV_INDEX)) {
            return Checked.unknown(TradeCheck.PATCH, "least", seen.missing(Quantity.UV_INDEX));
        }
        Optional<FoundZones.Patch> patch =
                seen.light().zones().flatMap(zones -> zones.found().onSurface()).flatMap(OnSurface::patch);
        if (patch.isEmpty()) {
            return Checked.fails(TradeCheck.PATCH, "none").by(0);
        }
        return seen.scene()
                .bodyMetres()
                .map(metres -> patch(seen, patch.get(), metres))
                .orElseGet(() -> Checked.unknown(
                        TradeCheck.PATCH,
                        "no-length",
                        seen.centimetres(patch.get().found().largestDiscMetres())));
    }

    private static Checked patch(Case seen, FoundZones.Patch patch, double bodyMetres) {
        BaskingPatch found = patch.found();
        double disc = found.largestDiscMetres();
        String wide = seen.centimetres(disc);
        String body = seen.centimetres(bodyMetres);
        if (found.fits()) {
            return Checked.holds(TradeCheck.PATCH, "fits", wide, body).by(disc);
        }
        return found.variation().isPresent()
                ? Checked.fails(
                                TradeCheck.PATCH,
                                "uneven",
                                body,
                                seen.formats().percent(found.variation().getAsDouble()))
                        .by(disc)
                : Checked.fails(TradeCheck.PATCH, "small", wide, body).by(disc);
    }

    /** Why there are no zones. */
    static Checked withoutZones(Case seen, TradeCheck check) {
        if (seen.scene().size().isEmpty()) {
            return Checked.unknown(check, "no-size");
        }
        return seen.scene().shown().flatMap(SpeciesNeed::zones).isEmpty()
                ? Checked.unknown(check, "no-target")
                : unpredicted(seen, check);
    }

    private static Checked unpredicted(Case seen, TradeCheck check) {
        return Checked.unknown(check, "not-predicted", seen.missing(Quantity.UV_INDEX));
    }
}
