package dapple.order;

import dapple.animal.AnimalDetails;
import dapple.animal.Animals;
import dapple.animal.GroupSplit;
import dapple.animal.RecordJoins;
import dapple.animal.Refusal;
import dapple.animal.RefusedException;
import dapple.animal.StayFacts;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.order.OrderFacts.EarlyEnd;
import dapple.order.VetOrder.Span;
import dapple.site.NotFoundException;
import dapple.site.Sites;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Places and ends orders of vets, one at a time for each animal: the newest ends the one before. */
@Service
public class Ordering {
    private final VetOrderRepository orders;
    private final Animals animals;
    private final Targets targets;
    private final Sites sites;
    private final ApplicationEventPublisher listeners;
    private final Clock clock;

    Ordering(
            VetOrderRepository orders,
            Animals animals,
            Targets targets,
            Sites sites,
            ApplicationEventPublisher listeners,
            Clock clock) {
        this.orders = orders;
        this.animals = animals;
        this.targets = targets;
        this.sites = sites;
        this.listeners = listeners;
        this.clock = clock;
    }

    /**
     * Places an order.
     *
     * @return its id
     * @throws OrderRefusedException if it would begin in the past, end before it begins, or lower nothing
     * @throws RefusedException if the animal is gone
     */
    @Transactional
    public long place(long siteId, NewOrder order) {
        AnimalDetails animal = animals.lock(siteId, order.animalId());
        Optional<Long> before = orders.findByEntryKey(order.key()).map(VetOrder::id);
        if (before.isPresent()) {
            return before.get();
        }
        if (!animal.isHere()) {
            throw RefusedException.of(Refusal.HAS_ENDED, animal.facts());
        }
        checkLowers(siteId, animal, order.ordered());
        Span span = span(siteId, order);
        List<VetOrder> former = orders.openAt(siteId, animal.id(), span.from());
        VetOrder placed = orders.saveAndFlush(new VetOrder(siteId, order, span, clock.instant()));
        EarlyEnd followed = new EarlyEnd(clock.instant(), order.personId(), order.reason(), Optional.of(placed.id()));
        former.forEach(one -> one.end(span.from(), followed));
        changed(siteId, animal.id(), span.from());
        return placed.id();
    }

    private void checkLowers(long siteId, AnimalDetails animal, Ordered ordered) {
        if (ordered instanceof Ordered.Cap cap) {
            Limits limits = limits(siteId, animal.facts().speciesId())
                    .orElseThrow(() -> new OrderRefusedException(OrderFault.CAP_WITHOUT_TARGET));
            if (!(cap.ceiling() < limits.ceiling())) {
                throw new OrderRefusedException(OrderFault.CAP_NOT_LOWER);
            }
        }
    }

    private Optional<Limits> limits(long siteId, long speciesId) {
        Optional<Target> target = Optional.ofNullable(
                targets.inForce(siteId, List.of(speciesId), clock.instant()).get(speciesId));
        return target.flatMap(found -> found.limits(Quantity.UV_INDEX));
    }

    /** Forms know minutes: one that begins in the present minute begins now. */
    private Span span(long siteId, NewOrder order) {
        Instant now = clock.instant();
        Instant from = order.from().orElse(now);
        if (from.isBefore(now.truncatedTo(ChronoUnit.MINUTES))) {
            throw new OrderRefusedException(OrderFault.BACKDATED);
        }
        ZoneId zone = sites.get(siteId).timeZone();
        Span span = new Span(
                from.isBefore(now) ? now : from,
                order.lastDay().plusDays(1).atStartOfDay(zone).toInstant());
        if (!span.from().isBefore(span.to())) {
            throw new OrderRefusedException(OrderFault.ENDS_BEFORE_IT_BEGINS);
        }
        return span;
    }

    /** Ends an order now; one that is over already stays as it is. */
    @Transactional
    public void end(long siteId, long animalId, long orderId, Ending ending) {
        animals.lock(siteId, animalId);
        VetOrder order = orders.findOfAnimal(siteId, animalId, orderId).orElseThrow(NotFoundException::new);
        Instant now = clock.instant();
        if (order.facts().isOpenAt(now)) {
            order.end(now, new EarlyEnd(now, ending.personId(), ending.reason(), Optional.empty()));
            changed(siteId, animalId, now);
        }
    }

    /** What leaves a group is treated on as the group was. */
    @EventListener
    void inherit(GroupSplit split) {
        List<VetOrder> inherited = orders.openAt(split.siteId(), split.groupId(), split.at());
        inherited.forEach(order -> orders.save(order.inheritedBy(split.newAnimalId(), split.at(), clock.instant())));
        if (!inherited.isEmpty()) {
            changed(split.siteId(), split.newAnimalId(), split.at());
        }
    }

    /** A treatment does not end by the way: the vet ends it first. */
    @EventListener
    void refuse(RecordJoins joins) {
        if (!orders.openAt(joins.siteId(), joins.animal().id(), joins.at()).isEmpty()) {
            throw RefusedException.of(Refusal.UNDER_ORDER, joins.animal());
        }
    }

    private void changed(long siteId, long animalId, Instant from) {
        Optional<StayFacts> stay = Optional.ofNullable(
                animals.presentStays(siteId, List.of(animalId)).get(animalId));
        stay.ifPresent(
                present -> listeners.publishEvent(new OrderChanged(siteId, animalId, present.enclosureId(), from)));
    }

    /** Why a vet ends an order. */
    public record Ending(String reason, long personId) {}
}
