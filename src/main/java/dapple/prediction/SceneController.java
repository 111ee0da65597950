package dapple.prediction;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The scene of an enclosure at an instant, or now, for a program that computes with it. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class SceneController {
    private final EnclosureScenes scenes;
    private final Clock clock;

    SceneController(EnclosureScenes scenes, Clock clock) {
        this.scenes = scenes;
        this.clock = clock;
    }

    @GetMapping(path = "/enclosures/{enclosureId}/scene.json", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> scene(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam @DateTimeFormat(iso = DateTimeFormat.ISO.DATE_TIME) Optional<Instant> at,
            @RequestParam Optional<Long> species) {
        return ResponseEntity.ok(
                scenes.at(me.siteId(), enclosureId, at.orElseGet(clock::instant), species, Optional.empty())
                        .document());
    }
}
