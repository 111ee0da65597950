package dapple.check;

import dapple.lamp.LampClass;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.rig.FittingFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a compact lamp lights a whole body: at its ends there must be half of what there is in its middle. */
final class CompactRule {
    /** Ours, as of beams, whose edge is where half is left. */
    static final double LEAST_SHARE = 0.5;

    private final Case seen;

    private CompactRule(Case seen) {
        this.seen = seen;
    }

    static Checked of(Case seen) {
        return new CompactRule(seen).checked();
    }

    private Checked checked() {
        List<FittingFacts> compacts = seen.fittings(kind -> kind == LampClass.COMPACT_FLUORESCENT);
        if (compacts.isEmpty()) {
            return Checked.holds(TradeCheck.COMPACT, "none");
        }
        Optional<Double> body = seen.scene().bodyMetres();
        if (body.isEmpty()) {
            return Checked.unknown(TradeCheck.COMPACT, "no-length", Case.tags(compacts));
        }
        List<Checked> found = new ArrayList<>();
        compacts.forEach(fitting -> found.add(checked(fitting, body.get())));
        return found.stream().min(Checked.GRAVEST_FIRST).orElseThrow();
    }

    private Checked checked(FittingFacts fitting, double bodyMetres) {
        String tag = fitting.lamp().tag();
        Optional<Double> share = seen.rig().scene().lamps().stream()
                .filter(lamp -> lamp.id().equals(tag))
                .findFirst()
                .flatMap(lamp -> share(lamp, bodyMetres));
        if (share.isEmpty()) {
            return Checked.unknown(TradeCheck.COMPACT, "not-predicted", tag);
        }
        String percent = seen.percent(share.get());
        String body = seen.centimetres(bodyMetres);
        Checked said = share.get() >= LEAST_SHARE
                ? Checked.holds(TradeCheck.COMPACT, "covers", tag, percent, body)
                : Checked.fails(TradeCheck.COMPACT, "leaves", tag, percent, body);
        return said.by(share.get());
    }

    /** At the worse end over the middle, along the walls as the body lies better. */
    private Optional<Double> share(Lamp lamp, double bodyMetres) {
        Optional<Vec> middle = seen.baskingPlace();
        Scene whole = seen.rig().scene();
        Field field = Field.of(new Scene(whole.accuracy(), List.of(lamp), whole.filters(), whole.solids()));
        double half = bodyMetres / 2;
        return middle.flatMap(at -> {
            double most = amount(field, at);
            return Stream.of(new Vec(half, 0, 0), new Vec(0, half, 0))
                    .filter(way -> isInside(at.plus(way)) && isInside(at.minus(way)))
                    .mapToDouble(way -> Math.min(amount(field, at.plus(way)), amount(field, at.minus(way))) / most)
                    .filter(Double::isFinite)
                    .boxed()
                    .max(Double::compare);
        });
    }

    private boolean isInside(Vec place) {
        return seen.scene()
                .size()
                .filter(size -> place.x() >= 0
                        && place.x() <= size.widthMetres()
                        && place.y() >= 0
                        && place.y() <= size.depthMetres())
                .isPresent();
    }

    private static double amount(Field field, Vec place) {
        return field.at(new Receiver(place, new Facing.Maximum())).values().getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }
}
