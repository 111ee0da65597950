package dapple.check;

import dapple.lamp.LampClass;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.rig.Cover;
import dapple.rig.CoverFacts;
import dapple.rig.CoverMaterial;
import dapple.rig.CoverTransmittance;
import dapple.rig.FittingFacts;
import dapple.rig.Mount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A pane of glass or acrylic between an ultraviolet lamp and the animals. */
final class PaneRule {
    /** What a pane must let through of the UV index: ours, no source; window glass passes a few hundredths. */
    static final double LEAST_PASSING = 0.5;

    private final Case seen;

    private PaneRule(Case seen) {
        this.seen = seen;
    }

    static Checked of(Case seen) {
        return new PaneRule(seen).checked();
    }

    private Checked checked() {
        List<FittingFacts> lamps = seen.fittings(LampClass::emitsUltraviolet);
        List<Cover> panes = seen.scene().rig().rig().covers().stream()
                .map(CoverFacts::cover)
                .filter(cover -> !cover.material().isMesh())
                .toList();
        if (lamps.isEmpty() || panes.isEmpty()) {
            return Checked.holds(TradeCheck.PANE, "none");
        }
        List<Checked> found = new ArrayList<>();
        panes.forEach(pane -> lamps.forEach(lamp -> found.add(checked(pane, lamp))));
        return found.stream().min(Checked.GRAVEST_FIRST).orElseThrow();
    }

    private Checked checked(Cover pane, FittingFacts fitting) {
        String tag = fitting.lamp().tag();
        Optional<Mount> mount = fitting.hanging().mount();
        if (pane.heightMetres().isEmpty() || mount.isEmpty()) {
            return Checked.unknown(TradeCheck.PANE, "no-place", pane.name(), tag);
        }
        if (!isBetween(pane, pane.heightMetres().get(), mount.get().centre())) {
            return Checked.holds(TradeCheck.PANE, "beside", pane.name(), tag);
        }
        return passing(pane)
                .map(share -> checked(pane.name(), tag, share))
                .orElseGet(() -> Checked.unknown(TradeCheck.PANE, "not-known", pane.name(), tag));
    }

    private Checked checked(String pane, String tag, double share) {
        String percent = seen.percent(share);
        Checked said = share >= LEAST_PASSING
                ? Checked.holds(TradeCheck.PANE, "passes", pane, tag, percent)
                : Checked.fails(TradeCheck.PANE, "stops", pane, tag, percent);
        return said.by(share);
    }

    private static Optional<Double> passing(Cover pane) {
        return Optional.of(pane.material())
                .filter(CoverMaterial.Passing.class::isInstance)
                .map(CoverMaterial.Passing.class::cast)
                .flatMap(known -> Optional.ofNullable(known.byQuantity().get(Quantity.UV_INDEX)))
                .map(CoverTransmittance::share)
                .map(share -> Math.pow(share, pane.layers()));
    }

    /** On the way to the basking place; where none is known, straight down. */
    private boolean isBetween(Cover pane, double height, Vec lamp) {
        Vec place = seen.baskingPlace().orElse(new Vec(lamp.x(), lamp.y(), 0));
        if (!(lamp.z() > height && place.z() < height)) {
            return false;
        }
        Vec at = lamp.plus(place.minus(lamp).times((lamp.z() - height) / (lamp.z() - place.z())));
        return pane.over()
                .map(over -> at.x() >= over.lowX()
                        && at.x() <= over.highX()
                        && at.y() >= over.lowY()
                        && at.y() <= over.highY())
                .orElse(true);
    }
}
