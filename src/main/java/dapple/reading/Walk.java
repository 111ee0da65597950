package dapple.reading;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.site.NotFoundException;
import dapple.species.SpeciesFacts;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * A visit under way.
 *
 * @param steps what is asked, point by point in walking order
 * @param read what has a reading
 * @param unread why something was not read
 * @param meters those in use at the site
 */
record Walk(
        EnclosureFacts enclosure,
        UUID visitKey,
        List<SpeciesFacts> species,
        List<Step> steps,
        Set<Step.Place> read,
        Map<Step.Place, Outcome> unread,
        List<MeterFacts> meters) {

    /** The points in walking order. */
    public List<PointFacts> points() {
        return steps.stream().filter(Step::first).map(Step::point).toList();
    }

    /** A step at a point: of the quantity if one is named, else the first that is open, or the first. */
    Step step(long pointId, Optional<Quantity> quantity) {
        List<Step> there =
                steps.stream().filter(step -> step.point().id() == pointId).toList();
        return quantity.map(named -> there.stream().filter(step -> step.quantity() == named))
                .orElseGet(() -> there.stream().filter(step -> !isDone(step)))
                .findFirst()
                .or(() ->
                        quantity.isPresent() ? Optional.empty() : there.stream().findFirst())
                .orElseThrow(NotFoundException::new);
    }

    /** The first step that has neither a reading nor a reason. */
    public Optional<Step> next() {
        return steps.stream().filter(step -> !isDone(step)).findFirst();
    }

    public boolean isRead(Step step) {
        return read.contains(step.place());
    }

    public Optional<Outcome> outcome(Step step) {
        return Optional.ofNullable(unread.get(step.place()));
    }

    public boolean isDone(Step step) {
        return isRead(step) || unread.containsKey(step.place());
    }

    /** The place of a point in the walk, from 1. */
    public int number(long pointId) {
        List<Long> ids = points().stream().map(PointFacts::id).toList();
        return ids.indexOf(pointId) + 1;
    }

    /** What is to be read here and is not asked, as no meter for it is in use. */
    public List<Step> withoutMeter() {
        return points().stream()
                .flatMap(point -> point.quantities().stream().map(quantity -> new Step(point, quantity, false)))
                .filter(step -> steps.stream().noneMatch(asked -> asked.place().equals(step.place())))
                .toList();
    }

    List<MeterFacts> metersFor(Quantity quantity) {
        return meters.stream().filter(meter -> meter.quantity() == quantity).toList();
    }

    String path() {
        return "/enclosures/" + enclosure.id() + "/visits/" + visitKey;
    }

    /** Where a step is asked. */
    public String pathOf(Step step) {
        return pathTo(step.point().id(), step.quantity(), step.first());
    }

    /** Where a quantity is asked again. */
    public String pathTo(long pointId, Quantity quantity) {
        boolean first = steps.stream()
                .anyMatch(step -> step.first() && step.point().id() == pointId && step.quantity() == quantity);
        return pathTo(pointId, quantity, first);
    }

    private String pathTo(long pointId, Quantity quantity, boolean first) {
        return path() + "/points/" + pointId + (first ? "" : "?quantity=" + quantity);
    }

    /** Where to go on: the next step, or the end of the visit. */
    public String onward() {
        return next().map(this::pathOf).orElse(path());
    }
}
