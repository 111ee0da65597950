package dapple.photo;

import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.reading.VisitFacts;
import dapple.reading.Visitor;
import dapple.reading.Visits;
import dapple.site.NotFoundException;
import jakarta.validation.Valid;
import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** One photo: its pictures, and its removal. */
@Controller
@RequestMapping("/photos/{photoId}")
class PhotoController {
    /** So short that a photo that was removed is soon gone from phones as well. */
    private static final Duration KEPT_BY_BROWSERS = Duration.ofHours(1);

    private final Photos photos;
    private final Visits visits;
    private final Enclosures enclosures;

    PhotoController(Photos photos, Visits visits, Enclosures enclosures) {
        this.photos = photos;
        this.visits = visits;
        this.enclosures = enclosures;
    }

    @GetMapping
    @Allowed(Action.SEE_ENCLOSURES)
    ResponseEntity<byte[]> full(@AuthenticationPrincipal SignedIn me, @PathVariable long photoId) {
        return picture(me, photoId, Scale.FULL);
    }

    @GetMapping("/small")
    @Allowed(Action.SEE_ENCLOSURES)
    ResponseEntity<byte[]> small(@AuthenticationPrincipal SignedIn me, @PathVariable long photoId) {
        return picture(me, photoId, Scale.SMALL);
    }

    private ResponseEntity<byte[]> picture(SignedIn me, long photoId, Scale scale) {
        byte[] content = photos.content(me.siteId(), photoId, scale).orElseThrow(NotFoundException::new);
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_JPEG)
                .cacheControl(CacheControl.maxAge(KEPT_BY_BROWSERS).cachePrivate())
                .header("X-Content-Type-Options", "nosniff")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .body(content);
    }

    @GetMapping("/removal")
    @Allowed(Action.LOG_READINGS)
    String ask(@AuthenticationPrincipal SignedIn me, @PathVariable long photoId, Model model) {
        model.addAttribute("form", new RemovalForm(""));
        return show(me, photoId, model);
    }

    @PostMapping("/removal")
    @Allowed(Action.LOG_READINGS)
    String remove(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long photoId,
            @Valid @ModelAttribute("form") RemovalForm form,
            BindingResult errors,
            Model model) {
        if (errors.hasErrors()) {
            return show(me, photoId, model);
        }
        photos.remove(Visitor.of(me), photoId, form.reason().strip());
        VisitFacts visit =
                visits.get(me.siteId(), photos.get(me.siteId(), photoId).visitId());
        return "redirect:/enclosures/" + visit.enclosureId() + "/visits/" + visit.key();
    }

    private String show(SignedIn me, long photoId, Model model) {
        PhotoFacts photo = photos.get(me.siteId(), photoId);
        model.addAttribute("photo", photo);
        model.addAttribute("enclosure", enclosures.get(me.siteId(), photo.enclosureId()));
        model.addAttribute("visit", visits.get(me.siteId(), photo.visitId()));
        model.addAttribute("mayRemove", photo.mayBeRemovedBy(Visitor.of(me)));
        return "photo/removal";
    }
}
