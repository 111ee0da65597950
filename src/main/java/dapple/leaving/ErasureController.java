package dapple.leaving;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Leaver;
import dapple.people.Leavers;
import dapple.people.People;
import dapple.people.PersonFacts;
import dapple.people.SignedIn;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What is kept about a person, and the end of their names. */
@Controller
@Allowed(Action.MANAGE_PEOPLE)
@RequestMapping("/people/{personId}")
class ErasureController {
    private static final String VIEW = "leaving/erasure";

    private final People people;
    private final Leavers leavers;
    private final Erasing erasing;
    private final KeptAbout kept;

    ErasureController(People people, Leavers leavers, Erasing erasing, KeptAbout kept) {
        this.people = people;
        this.leavers = leavers;
        this.erasing = erasing;
        this.kept = kept;
    }

    @GetMapping("/erasure")
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long personId, Model model) {
        return show(me, personId, model);
    }

    /** Of a page that shows an older state nothing is taken. */
    @PostMapping("/erasure")
    String erase(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long personId,
            @RequestParam(defaultValue = "-1") long version,
            Model model,
            HttpServletResponse response) {
        try {
            erasing.eraseNow(me, personId, version);
            return "redirect:/people/" + personId;
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            model.addAttribute("stale", true);
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return show(me, personId, model);
        }
    }

    private String show(SignedIn me, long personId, Model model) {
        PersonFacts person = people.get(me.siteId(), personId);
        Leaver leaver = leavers.get(me.siteId(), personId);
        model.addAttribute("person", person);
        model.addAttribute("leaver", leaver);
        model.addAttribute("isMe", personId == me.personId());
        model.addAttribute("months", me.settings().namesKept());
        return VIEW;
    }

    @GetMapping("/kept.json")
    ResponseEntity<String> kept(@AuthenticationPrincipal SignedIn me, @PathVariable long personId) {
        PersonFacts person =
                people.get(me.siteId(), leavers.get(me.siteId(), personId).personId());
        ContentDisposition saved = ContentDisposition.attachment()
                .filename("kept-about-person-" + personId + ".json")
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_JSON)
                .header(HttpHeaders.CONTENT_DISPOSITION, saved.toString())
                .header(HttpHeaders.CACHE_CONTROL, "no-store")
                .body(kept.of(person));
    }
}
