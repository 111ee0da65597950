package dapple.prediction;

import dapple.animal.BodyLengthFacts;
import dapple.animal.Occupant;
import dapple.animal.ReachInside;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.light.survey.Needs;
import dapple.light.zone.Body;
import dapple.rig.Rig;
import dapple.rig.RigScene;
import dapple.rig.SceneDocument;
import dapple.rig.ZoneQuestion;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * An enclosure with its rig, its points and those who live there: all that its light is computed from.
 *
 * @param points in use, in walking order
 * @param needs of each species that lives there, the strictest ceiling first
 * @param shown the species whose target is drawn; empty where nobody lives
 */
public record EnclosureScene(
        EnclosureFacts enclosure,
        RigScene rig,
        List<PointFacts> points,
        List<Occupant> occupants,
        List<SpeciesNeed> needs,
        Optional<SpeciesNeed> shown) {
    public EnclosureScene {
        points = List.copyOf(points);
        occupants = List.copyOf(occupants);
        needs = List.copyOf(needs);
    }

    /** The same enclosure and animals under another rig. */
    public EnclosureScene under(RigScene other) {
        return new EnclosureScene(enclosure, other, points, occupants, needs, shown);
    }

    /** The same with points tried elsewhere. */
    public EnclosureScene withPoints(List<PointFacts> others) {
        return new EnclosureScene(enclosure, rig, others, occupants, needs, shown);
    }

    public Optional<InnerSize> size() {
        return enclosure.size();
    }

    /** The same enclosure with another rig. */
    public EnclosureScene with(Rig other) {
        return new EnclosureScene(enclosure, RigScene.of(other), points, occupants, needs, shown);
    }

    /** The first basking point with coordinates. */
    public Optional<PointFacts> baskingPoint() {
        return points.stream()
                .filter(point ->
                        point.role() == PointRole.BASKING && point.position().isPresent())
                .findFirst();
    }

    /** Whoever is longest among those whose length is known must find room. */
    public Optional<Double> bodyMetres() {
        return occupants.stream()
                .flatMap(occupant -> occupant.length().map(BodyLengthFacts::metres).stream())
                .max(Comparator.naturalOrder());
    }

    /** Whether a point serves somebody who needs this. */
    public boolean serves(PointFacts point, SpeciesNeed need) {
        return need.holders(occupants.stream().map(Occupant::animal).toList(), needs).stream()
                .anyMatch(animal -> point.serves(animal.speciesId(), animal.id()));
    }

    /** Where it is cut for the drawings: through the basking point, else through the middle. */
    public Cut cut(InnerSize size) {
        return baskingPoint()
                .flatMap(PointFacts::position)
                .map(at -> new Cut(inside(at.yMetres(), size.depthMetres()), inside(at.zMetres(), size.heightMetres())))
                .orElseGet(() -> new Cut(size.depthMetres() / 2, size.heightMetres() / 2));
    }

    private static double inside(double metres, double most) {
        return Math.max(0, Math.min(metres, most));
    }

    /** What its animals need of the UV index; empty where no target is in force, or none is predicted. */
    Optional<Needs> zones() {
        return zones(Quantity.UV_INDEX);
    }

    /** What its animals need of a quantity. */
    Optional<Needs> zones(Quantity quantity) {
        if (!rig.quantities().contains(quantity)) {
            return Optional.empty();
        }
        return size().flatMap(size -> shown.flatMap(need -> need.zones(quantity))
                .map(target -> {
                    Needs needs = Needs.of(quantity, target).restingOn(rig.restingSurfaces(size), body());
                    return reach().groundMetres().map(needs::reaching).orElse(needs);
                }));
    }

    private Optional<Body> body() {
        return bodyMetres().map(metres -> new Body(metres, Body.USUAL_EVENNESS));
    }

    /** How far its animals come. */
    public ReachInside reach() {
        return ReachInside.of(enclosure.reach(), occupants);
    }

    /** The same for programs; zones are asked for where a body is known that must fit. */
    public String document() {
        Optional<ZoneQuestion> question = zones().flatMap(needs -> needs.body()
                .flatMap(body -> size().map(size -> new ZoneQuestion(
                        size,
                        Mesh.FINE.stepMetres(size),
                        needs.quantity(),
                        needs.target(),
                        body,
                        needs.reachMetres()))));
        return SceneDocument.of(rig, points, question);
    }

    /**
     * Where a drawing cuts.
     *
     * @param depthMetres of the section, from the front
     * @param heightMetres of the plan, above the floor
     */
    public record Cut(double depthMetres, double heightMetres) {}
}
