package dapple.photo;

import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.reading.Visitor;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** The photos of a visit; a part of the page of its end, and a page of its own. */
@Controller
@Allowed(Action.LOG_READINGS)
@RequestMapping("/enclosures/{enclosureId}/visits/{visitKey}/photos")
class VisitPhotosController {
    private final Photos photos;
    private final Enclosures enclosures;
    private final People people;

    VisitPhotosController(Photos photos, Enclosures enclosures, People people) {
        this.photos = photos;
        this.enclosures = enclosures;
        this.people = people;
    }

    @GetMapping
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            Model model) {
        model.addAttribute("enclosure", enclosures.get(me.siteId(), enclosureId));
        List<PhotoFacts> taken = photos.ofVisit(me.siteId(), visitKey);
        model.addAttribute("photos", taken);
        model.addAttribute("isFull", taken.stream().filter(PhotoFacts::isThere).count() >= Photos.MOST_OF_A_VISIT);
        model.addAttribute(
                "mine",
                taken.stream().filter(one -> one.mayBeRemovedBy(Visitor.of(me))).toList());
        model.addAttribute("visitKey", visitKey);
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute("key", UUID.randomUUID());
        return "photo/photos";
    }

    @PostMapping
    String add(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable UUID visitKey,
            @RequestParam UUID key,
            @RequestParam Optional<MultipartFile> photo,
            Model model) {
        enclosures.get(me.siteId(), enclosureId);
        try {
            photos.add(new NewPhoto(Visitor.of(me), visitKey, enclosureId, key), new PhotoFile(photo).bytes());
            return "redirect:/enclosures/" + enclosureId + "/visits/" + visitKey;
        } catch (PhotoRefusedException refused) {
            model.addAttribute("fault", refused.fault());
            return page(me, enclosureId, visitKey, model);
        }
    }
}
