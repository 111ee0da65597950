package dapple.approval;

import dapple.evidence.ChoiceFacts;
import dapple.evidence.EvidenceFacts;
import dapple.evidence.EvidenceKeeping;
import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.SourceMark;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.EarlierReadings;
import dapple.target.Targets;
import dapple.target.VersionDetails;
import dapple.target.ZoneLimits;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
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
import org.springframework.web.bind.annotation.RequestParam;

/** The next version of a species' target: typed, shown against the one in force, approved. */
@Controller
@Allowed(Action.SET_TARGETS)
@RequestMapping("/targets/{speciesId}/next")
class NextController {
    private static final String PAGE = "approval/next";

    private final SpeciesKeeping species;
    private final EvidenceKeeping evidence;
    private final Targets targets;
    private final ZoneLimits zoneLimits;
    private final HoursFromTheSun sun;
    private final People people;
    private final EarlierReadings earlier;

    NextController(
            SpeciesKeeping species,
            EvidenceKeeping evidence,
            Targets targets,
            ZoneLimits zoneLimits,
            HoursFromTheSun sun,
            People people,
            EarlierReadings earlier) {
        this.species = species;
        this.evidence = evidence;
        this.targets = targets;
        this.zoneLimits = zoneLimits;
        this.sun = sun;
        this.people = people;
        this.earlier = earlier;
    }

    @ModelAttribute("species")
    SpeciesFacts species(@AuthenticationPrincipal SignedIn me, @PathVariable long speciesId) {
        return species.get(me.siteId(), speciesId);
    }

    @ModelAttribute("zones")
    List<UvZone> zones() {
        return UvZone.usual();
    }

    @ModelAttribute("allMarks")
    List<SourceMark> marks() {
        return List.of(SourceMark.values());
    }

    @ModelAttribute("quantities")
    List<Quantity> quantities() {
        return CellName.quantities();
    }

    @ModelAttribute("people")
    Map<Long, String> people(@AuthenticationPrincipal SignedIn me) {
        return people.names(me.siteId());
    }

    /** Starts from the version in force, or from the limits of a zone that was asked for or is chosen by evidence. */
    @GetMapping
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long speciesId,
            @RequestParam(defaultValue = "") String from,
            Model model) {
        Optional<VersionDetails> inForce = targets.newest(me.siteId(), speciesId);
        Optional<UvZone> zone = UvZone.withCode(from);
        if (zone.isEmpty() && inForce.isEmpty()) {
            zone = evidence.choices(me.siteId(), speciesId).stream()
                    .findFirst()
                    .map(ChoiceFacts::evidence)
                    .map(EvidenceFacts::zone);
        }
        TargetForm start = NextStart.form(zoneLimits, zone, inForce)
                .forEarlierReadings(inForce.isEmpty() && earlier.existAt(me.siteId()));
        return show(model, inForce, start);
    }

    /** Shows what would change; what was shown and is sent again unchanged is approved. */
    @PostMapping
    String approve(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long speciesId,
            @Valid @ModelAttribute("form") TargetForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Optional<VersionDetails> inForce = targets.newest(me.siteId(), speciesId);
        Optional<Approval> read = new TargetReading(form, errors).approval(speciesId, me.personId());
        if (read.isEmpty()) {
            return show(model, inForce, form);
        }
        Approval approval = read.get();
        TargetChanges changes = TargetChanges.between(inForce, approval);
        boolean isSentAgain = inForce.filter(newest -> newest.is(approval)).isPresent();
        try {
            if (isSentAgain || form.shown().equals(changes.fingerprint())) {
                targets.approveAfter(me.siteId(), form.versionSeen(), approval);
                return "redirect:/targets/" + speciesId;
            }
        } catch (ConflictException approvedMeanwhile) {
            return conflict(targets.newest(me.siteId(), speciesId), form, model, response);
        }
        if (form.versionSeen() != number(inForce)) {
            return conflict(inForce, form, model, response);
        }
        model.addAttribute("changes", changes);
        return show(model, inForce, form.showing(changes.fingerprint()));
    }

    /** Fills in hours of light and stores nothing. */
    @PostMapping(params = "sun")
    String fillIn(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long speciesId,
            @ModelAttribute("form") TargetForm form,
            BindingResult errors,
            Model model) {
        Optional<TargetForm> lit = sun.fillIn(form, errors);
        lit.ifPresent(filled -> model.addAttribute("lit", filled));
        return show(model, targets.newest(me.siteId(), speciesId), lit.orElse(form));
    }

    private static int number(Optional<VersionDetails> version) {
        return version.map(found -> found.target().number()).orElse(0);
    }

    /** Both states stand on the page, and the next try follows theirs. */
    private static String conflict(
            Optional<VersionDetails> theirs, TargetForm form, Model model, HttpServletResponse response) {
        theirs.ifPresent(version -> model.addAttribute("theirs", version));
        response.setStatus(HttpServletResponse.SC_CONFLICT);
        return show(model, theirs, form.after(number(theirs)));
    }

    /** A form that comes back with messages keeps them: it is put on the page only if it is another. */
    private static String show(Model model, Optional<VersionDetails> inForce, TargetForm form) {
        if (!form.equals(model.getAttribute("form"))) {
            model.addAttribute("form", form);
        }
        model.addAttribute("inForce", inForce);
        model.addAttribute("practice", Practice.of(form));
        return PAGE;
    }
}
