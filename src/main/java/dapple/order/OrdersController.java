package dapple.order;

import dapple.animal.AnimalDetails;
import dapple.animal.Animals;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Every order for one animal; a vet ends one early. */
@Controller
@Allowed(Action.SEE_ANIMALS)
@RequestMapping("/animals/{animalId}/orders")
class OrdersController {
    private final VetOrders orders;
    private final Ordering ordering;
    private final Animals animals;
    private final People people;

    OrdersController(VetOrders orders, Ordering ordering, Animals animals, People people) {
        this.orders = orders;
        this.ordering = ordering;
        this.animals = animals;
        this.people = people;
    }

    @ModelAttribute("animal")
    AnimalDetails animal(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return animals.details(me.siteId(), animalId);
    }

    @ModelAttribute("names")
    Map<Long, String> names(@AuthenticationPrincipal SignedIn me) {
        return people.names(me.siteId());
    }

    @ModelAttribute("orders")
    List<OrderFacts> orders(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId) {
        return orders.ofAnimal(me.siteId(), animalId);
    }

    @GetMapping
    String page(Model model) {
        model.addAttribute("form", new EndingForm(""));
        return "order/orders";
    }

    @PostMapping("/{orderId}/ending")
    @Allowed(Action.ORDER_LIGHT)
    String end(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @PathVariable long orderId,
            @Valid @ModelAttribute("form") EndingForm form,
            BindingResult errors,
            Model model) {
        if (errors.hasErrors()) {
            model.addAttribute("ending", orderId);
            return "order/orders";
        }
        ordering.end(
                me.siteId(),
                animalId,
                orderId,
                new Ordering.Ending(form.reason().strip(), me.personId()));
        return "redirect:/animals/" + animalId + "/orders";
    }
}
