package dapple.housing;

import dapple.animal.Animals;
import dapple.animal.Chronicle;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** What happened to an animal or a group, with how many they were after it. */
@Controller
@Allowed(Action.SEE_ANIMALS)
class EventsController {
    private final Animals animals;
    private final Chronicle chronicle;
    private final People people;

    EventsController(Animals animals, Chronicle chronicle, People people) {
        this.animals = animals;
        this.chronicle = chronicle;
        this.people = people;
    }

    @GetMapping("/animals/{animalId}/events")
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long animalId, Model model) {
        model.addAttribute("animal", animals.details(me.siteId(), animalId));
        model.addAttribute("events", chronicle.of(me.siteId(), animalId));
        model.addAttribute("names", people.names(me.siteId()));
        return "housing/events";
    }
}
