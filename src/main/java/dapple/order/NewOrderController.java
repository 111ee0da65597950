package dapple.order;

import dapple.animal.AnimalDetails;
import dapple.animal.Animals;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.When;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** A vet orders what the light of one animal or group is to be. */
@Controller
@Allowed(Action.ORDER_LIGHT)
@RequestMapping("/animals/{animalId}/orders/new")
class NewOrderController {
    private static final String PAGE = "order/new";

    private final Ordering ordering;
    private final VetOrders orders;
    private final Mates mates;
    private final Animals animals;
    private final Clock clock;

    NewOrderController(Ordering ordering, VetOrders orders, Mates mates, Animals animals, Clock clock) {
        this.ordering = ordering;
        this.orders = orders;
        this.mates = mates;
        this.animals = animals;
        this.clock = clock;
    }

    @ModelAttribute("animal")
    AnimalDetails animal(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return animals.details(me.siteId(), animalId);
    }

    @ModelAttribute("open")
    List<OrderFacts> open(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return orders.openOf(me.siteId(), animalId, clock.instant());
    }

    @ModelAttribute("mates")
    List<Needs> mates(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return mates.of(me.siteId(), animalId, clock.instant());
    }

    @GetMapping
    String fresh(Model model) {
        model.addAttribute("form", OrderForm.empty());
        return PAGE;
    }

    @PostMapping
    String place(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "animal", binding = false) AnimalDetails animal,
            @Valid @ModelAttribute("form") OrderForm form,
            BindingResult errors,
            Model model) {
        Optional<Instant> from = check(me, form, errors);
        if (errors.hasErrors() || !accepted(me, animal, form, model)) {
            return PAGE;
        }
        try {
            ordering.place(me.siteId(), order(me, animal, form, from));
            return "redirect:/animals/" + animal.id() + "/orders";
        } catch (OrderRefusedException refused) {
            reject(refused.fault(), errors);
            return PAGE;
        }
    }

    private Optional<Instant> check(SignedIn me, OrderForm form, BindingResult errors) {
        if (errors.getTarget() == null) {
            return Optional.empty();
        }
        form.check(errors, LocalDate.now(clock.withZone(me.zone())));
        if (form.from() == null) {
            return Optional.empty();
        }
        return When.ever(me.zone()).read("from", form.from(), form.fromWhich(), errors);
    }

    /** Conflicts with cage mates are shown and must be accepted, those alone that were shown. */
    private boolean accepted(SignedIn me, AnimalDetails animal, OrderForm form, Model model) {
        List<NeedsConflict> conflicts = mates.conflicts(me.siteId(), animal.facts(), form.ordered(), clock.instant());
        String key = NeedsConflict.key(conflicts);
        model.addAttribute("conflicts", conflicts);
        model.addAttribute("conflictsKey", key);
        return conflicts.isEmpty() || key.equals(form.despite());
    }

    private static NewOrder order(SignedIn me, AnimalDetails animal, OrderForm form, Optional<Instant> from) {
        return new NewOrder(
                animal.id(),
                form.ordered(),
                form.reason().strip(),
                from,
                Given.of(form.lastDay()),
                Given.of(form.key()),
                me.personId());
    }

    private static void reject(OrderFault fault, BindingResult errors) {
        switch (fault) {
            case BACKDATED -> errors.rejectValue("from", "order.backdated");
            case ENDS_BEFORE_IT_BEGINS -> errors.rejectValue("lastDay", "order.ends-first");
            case CAP_WITHOUT_TARGET -> errors.rejectValue("kind", "order.cap.no-target");
            case CAP_NOT_LOWER -> errors.rejectValue("ceiling", "order.cap.not-lower");
        }
    }
}
