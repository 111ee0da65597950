package dapple.desk;

import dapple.enclosure.PointFacts;
import dapple.light.design.Demand;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.SpeciesNeed;
import dapple.rig.RigScene;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** What targets and vets' orders in force ask of the light in an enclosure, as demands on a rig. */
@Component
class Demanding {
    private final MessageSource messages;

    Demanding(MessageSource messages) {
        this.messages = messages;
    }

    private record Asked(SpeciesNeed need, Quantity quantity, PointFacts point, Receiver at, Band band) {}

    /**
     * At each basking and shade point what is needed there, and in all of the reach the strictest ceiling.
     *
     * @param lamps the middles of lamps, below which the ceiling is looked at too
     */
    List<Wanted> of(EnclosureScene scene, Collection<Vec> lamps) {
        List<Asked> all = new ArrayList<>();
        for (SpeciesNeed need : scene.needs()) {
            for (Quantity quantity : RigScene.LIGHT) {
                need.limits(quantity).ifPresent(limits -> all.addAll(atPoints(scene, need, quantity, limits)));
            }
        }
        List<Receiver> reach = InReach.of(scene, lamps);
        List<Wanted> wanted = new ArrayList<>(merged(all));
        RigScene.LIGHT.forEach(quantity -> ceiling(scene, quantity, reach).ifPresent(wanted::add));
        return wanted;
    }

    private static List<Asked> atPoints(EnclosureScene scene, SpeciesNeed need, Quantity quantity, Limits limits) {
        List<Asked> asked = new ArrayList<>();
        for (PointFacts point : scene.points()) {
            Band band = band(limits, point.role());
            if (!band.isOpen() && scene.serves(point, need)) {
                receiver(scene, point).ifPresent(at -> asked.add(new Asked(need, quantity, point, at, band)));
            }
        }
        return asked;
    }

    private static Band band(Limits limits, PointRole role) {
        return switch (role) {
            case BASKING -> limits.basking();
            case SHADE -> limits.shade();
            case GRADIENT, NEAREST_REACHABLE, KEEPER -> Band.OPEN;
        };
    }

    /** The place of a point; a lamp that hangs on it may go. */
    private static Optional<Receiver> receiver(EnclosureScene scene, PointFacts point) {
        return scene.rig()
                .receiver(point)
                .or(() -> point.position()
                        .map(at -> new Vec(at.xMetres(), at.yMetres(), at.zMetres()))
                        .filter(place -> scene.rig().scene().solidAround(place) < 0)
                        .map(place -> new Receiver(place, new Facing.Maximum())));
    }

    /** Those who need the same are named together. */
    private List<Wanted> merged(List<Asked> all) {
        Map<List<Object>, List<Asked>> alike = all.stream()
                .collect(Collectors.groupingBy(
                        one -> List.of(one.quantity(), one.point().id(), one.band()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return alike.values().stream().map(this::wanted).toList();
    }

    private Wanted wanted(List<Asked> alike) {
        Asked one = alike.get(0);
        PointRole role = one.point().role();
        String holder =
                alike.stream().map(asked -> holder(asked.need())).distinct().collect(Collectors.joining(", "));
        String name = say(
                "desk.demand.point",
                quantity(one.quantity()),
                one.point().code(),
                say("role-of-point." + role),
                holder);
        Demand.Kind kind = role == PointRole.SHADE ? Demand.Kind.SHADE : Demand.Kind.BAND;
        return new Wanted(new Demand(name, kind, one.quantity(), List.of(one.at()), one.band()), holder);
    }

    private Optional<Wanted> ceiling(EnclosureScene scene, Quantity quantity, List<Receiver> reach) {
        return scene.needs().stream()
                .filter(need -> ceilingOf(need, quantity) < Limits.NO_CEILING)
                .min(Comparator.comparingDouble(need -> ceilingOf(need, quantity)))
                .filter(need -> !reach.isEmpty())
                .map(need -> new Wanted(
                        Demand.ceiling(
                                say("desk.demand.ceiling", quantity(quantity), holder(need)),
                                quantity,
                                reach,
                                ceilingOf(need, quantity)),
                        holder(need)));
    }

    private static double ceilingOf(SpeciesNeed need, Quantity quantity) {
        return need.limits(quantity).map(Limits::ceiling).orElse(Limits.NO_CEILING);
    }

    private static String holder(SpeciesNeed need) {
        return need.order()
                .map(under -> under.animal().name() + " (" + need.scientificName() + ")")
                .orElse(need.scientificName());
    }

    private String quantity(Quantity quantity) {
        return say("quantity." + quantity);
    }

    private String say(String key, Object... words) {
        return messages.getMessage(key, words, Locale.UK);
    }
}
