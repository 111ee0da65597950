package dapple.rig;

import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.zone.RestingSurface;
import dapple.rig.LampInScene.Found;
import dapple.rig.LeftOut.Why;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A rig as the engine sees it, and what of it the engine cannot see. A quantity of which a cover does not say how much
 * passes is not in it at all.
 */
public final class RigScene {
    /** Largest relative error of the integration: small beside what is known of lamps. */
    public static final double ACCURACY = 0.005;

    /** The quantities of light, which lamps give and covers let through. */
    public static final List<Quantity> LIGHT = List.of(
            Quantity.UV_INDEX, Quantity.ILLUMINANCE, Quantity.UVA, Quantity.IR_A, Quantity.IR_B, Quantity.IRRADIANCE);

    private static final int MOST_SURFACES = 10;

    /** Nearer to a lamp nothing is predicted, m. */
    private static final double NEAREST_METRES = 0.001;

    private final Scene scene;
    private final List<LampInScene> lamps;
    private final Set<Quantity> quantities;
    private final List<LeftOut> leftOut;
    private final Rig rig;

    private RigScene(Rig rig, List<Solid> solids, List<LampInScene> lamps, List<LeftOut> unseen) {
        this.rig = rig;
        this.leftOut = new ArrayList<>(unseen);
        this.quantities = predicted(rig, lamps);
        this.lamps = lamps.stream()
                .filter(lamp -> lamp.outputs().keySet().stream().anyMatch(quantities::contains))
                .toList();
        addUnknownLamps();
        List<Filter> filters = rig.covers().stream()
                .flatMap(facts -> CoverInScene.filter(facts.cover()).stream())
                .toList();
        this.scene = new Scene(
                ACCURACY, this.lamps.stream().map(lamp -> lamp.lamp(quantities)).toList(), filters, solids);
    }

    public static RigScene of(Rig rig) {
        List<Solid> solids = rig.furniture().stream()
                .map(facts -> facts.furniture().shape().solid())
                .toList();
        List<LampInScene> seen = new ArrayList<>();
        List<LeftOut> unseen = new ArrayList<>();
        for (FittingFacts fitting : rig.fittings()) {
            Found found = LampInScene.find(fitting, solids);
            if (found instanceof Found.Seen lamp) {
                seen.add(lamp.lamp());
            } else if (found instanceof Found.Unseen lamp) {
                unseen.add(lamp.leftOut());
            }
        }
        return new RigScene(rig, solids, seen, unseen);
    }

    /** What the lamps give and every cover says how much passes of; says what is left out. */
    private Set<Quantity> predicted(Rig of, List<LampInScene> seen) {
        Set<Quantity> given = EnumSet.noneOf(Quantity.class);
        seen.forEach(lamp -> given.addAll(lamp.outputs().keySet()));
        Set<Quantity> known = EnumSet.noneOf(Quantity.class);
        known.addAll(given);
        for (CoverFacts facts : of.covers()) {
            Cover cover = facts.cover();
            if (cover.heightMetres().isEmpty() && !given.isEmpty()) {
                leftOut.add(new LeftOut(cover.name(), Why.COVER_WITHOUT_HEIGHT));
                known.clear();
            }
            given.stream()
                    .filter(quantity -> !CoverInScene.names(cover, quantity))
                    .forEach(quantity -> {
                        leftOut.add(new LeftOut(cover.name(), quantity, Why.COVER_QUANTITY_UNKNOWN));
                        known.remove(quantity);
                    });
        }
        return known;
    }

    /** A lamp that may give a quantity, nobody knows how much, makes what is predicted a least. */
    private void addUnknownLamps() {
        for (Quantity quantity : quantities) {
            rig.fittings().stream()
                    .map(FittingFacts::lamp)
                    .filter(lamp -> mayGive(lamp.model().lampClass(), quantity) && !gives(lamp, quantity))
                    .forEach(lamp -> leftOut.add(new LeftOut(lamp.tag(), quantity, Why.LAMP_QUANTITY_UNKNOWN)));
        }
    }

    private boolean gives(LampFacts lamp, Quantity quantity) {
        return lamps.stream()
                .anyMatch(
                        seen -> seen.lamp().id() == lamp.id() && seen.outputs().containsKey(quantity));
    }

    private static boolean mayGive(LampClass kind, Quantity quantity) {
        if (quantity == Quantity.UV_INDEX || quantity == Quantity.UVA) {
            return kind.emitsUltraviolet();
        }
        return quantity != Quantity.ILLUMINANCE || kind != LampClass.INFRARED_EMITTER;
    }

    public Rig rig() {
        return rig;
    }

    public Scene scene() {
        return scene;
    }

    /** The quantities that are predicted. */
    public Set<Quantity> quantities() {
        return Set.copyOf(quantities);
    }

    public List<LeftOut> leftOut() {
        return List.copyOf(leftOut);
    }

    /** Whether there is any light to be predicted. */
    public boolean isPredictable() {
        return !lamps.isEmpty();
    }

    /** Whether nothing is known to be missing from what is predicted of a quantity. */
    public boolean isWhole(Quantity quantity) {
        return leftOut.stream()
                .noneMatch(
                        missing -> missing.quantity().filter(quantity::equals).isPresent());
    }

    /** Standard uncertainty of each output, relative, lamp by lamp in the order of the scene. */
    public List<Map<Quantity, Double>> relativeUncertainties() {
        return lamps.stream().map(this::uncertainties).toList();
    }

    private Map<Quantity, Double> uncertainties(LampInScene lamp) {
        Map<Quantity, Double> shares = new EnumMap<>(Quantity.class);
        lamp.outputs().values().stream()
                .filter(output -> quantities.contains(output.quantity()))
                .forEach(output -> shares.put(output.quantity(), output.relativeUncertainty()));
        return shares;
    }

    /** Where light is asked for at a point, held as the point says; empty without coordinates, or where none can be. */
    public Optional<Receiver> receiver(PointFacts point) {
        return point.position()
                .map(position -> new Vec(position.xMetres(), position.yMetres(), position.zMetres()))
                .filter(this::isOpen)
                .map(place -> new Receiver(place, facing(point)));
    }

    private static Facing facing(PointFacts point) {
        return switch (point.facing()) {
            case STRONGEST -> new Facing.Maximum();
            case LEVEL -> new Facing.Direction(Vec.UP);
        };
    }

    /** Whether a place lies in no piece of furniture and on no lamp. */
    public boolean isOpen(Vec place) {
        return scene.solidAround(place) < 0 && lamps.stream().allMatch(lamp -> lamp.distance(place) > NEAREST_METRES);
    }

    /** The floor and the tops that animals rest on, as far as they are level; not more than a scene may name. */
    public List<RestingSurface> restingSurfaces(InnerSize size) {
        return Surfaces.of(size, rig.furniture()).stream().limit(MOST_SURFACES).toList();
    }

    List<LampInScene> lamps() {
        return lamps;
    }
}
