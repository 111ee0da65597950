package dapple.desk;

import dapple.desk.Proposed.Shown;
import dapple.draft.DraftFacts;
import dapple.draft.DraftPlace;
import dapple.draft.Drafts;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Caution;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import jakarta.servlet.http.HttpServletResponse;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Looks in the background for rigs that meet all that is needed, and makes one a draft. */
@Controller
@Allowed(Action.CHANGE_RIGS)
@RequestMapping("/enclosures/{enclosureId}/desk/{draftId}/proposals")
class ProposalController {
    /** A name may be taken a few times. */
    private static final int MOST_NAMES = 30;

    private static final int LONGEST_NAME = 80;

    private final DeskOpening opening;
    private final Enclosures enclosures;
    private final Drafts drafts;
    private final Proposing proposing;
    private final Jobs jobs;
    private final MessageSource messages;

    ProposalController(
            DeskOpening opening,
            Enclosures enclosures,
            Drafts drafts,
            Proposing proposing,
            Jobs jobs,
            MessageSource messages) {
        this.opening = opening;
        this.enclosures = enclosures;
        this.drafts = drafts;
        this.proposing = proposing;
        this.jobs = jobs;
        this.messages = messages;
    }

    @GetMapping
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            Model model) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        return show(me, enclosure, drafts.get(new DraftPlace(me.siteId(), enclosureId), draftId), model);
    }

    private String show(SignedIn me, EnclosureFacts enclosure, DraftFacts draft, Model model) {
        Optional<Job.Standing> job = jobs.find(key(me, draft));
        Optional<Proposed> found = job.flatMap(Job.Standing::found);
        model.addAttribute("draft", draft);
        model.addAttribute("enclosure", enclosure);
        model.addAttribute("job", job.orElse(null));
        model.addAttribute("found", found.orElse(null));
        model.addAttribute("cautions", cautions(found));
        return "desk/proposals";
    }

    /** Of all lamps that any of the rigs would hang, to be bought or not: here it is decided which. */
    private static Set<Caution> cautions(Optional<Proposed> found) {
        Set<Caution> cautions = EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT, Caution.MAINS);
        found.map(ProposalController::rigs).orElse(List.of()).forEach(rig -> cautions.addAll(rig.cautions()));
        return cautions;
    }

    private static Jobs.Key key(SignedIn me, DraftFacts draft) {
        return new Jobs.Key(draft.id(), me.personId());
    }

    @PostMapping
    String begin(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            Model model,
            HttpServletResponse response) {
        Desk desk = opening.of(me, enclosureId);
        DraftFacts draft = drafts.get(desk.place(), draftId);
        boolean isBegun = jobs.begin(
                key(me, draft), draft.version(), (crew, progress) -> proposing.propose(desk, draft, crew, progress));
        if (!isBegun) {
            response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
            model.addAttribute("busy", true);
            return show(me, desk.installed().enclosure(), draft, model);
        }
        return "redirect:" + address(enclosureId, draftId);
    }

    @PostMapping("/stop")
    String stop(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, @PathVariable long draftId) {
        jobs.stop(key(me, drafts.get(new DraftPlace(me.siteId(), enclosureId), draftId)));
        return "redirect:" + address(enclosureId, draftId);
    }

    /** A rig that was found becomes a draft beside the others. */
    @PostMapping("/draft")
    String draft(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long draftId,
            @RequestParam(defaultValue = "") String rig) {
        Desk desk = opening.of(me, enclosureId);
        DraftFacts from = drafts.get(desk.place(), draftId);
        Shown chosen = chosen(jobs.find(key(me, from)).flatMap(Job.Standing::found), rig);
        String what = chosen.merit().map(merit -> "desk.merit." + merit).orElse("desk.propose.nearest.name");
        return "redirect:/enclosures/" + enclosureId + "/desk/" + made(desk, from.name() + ", " + say(what), chosen);
    }

    private static Shown chosen(Optional<Proposed> found, String rig) {
        List<Shown> rigs = found.map(ProposalController::rigs).orElse(List.of());
        return rig.matches("[0-9]")
                ? rigs.stream().skip(Integer.parseInt(rig)).findFirst().orElseThrow(NotFoundException::new)
                : notFound();
    }

    private static Shown notFound() {
        throw new NotFoundException();
    }

    private static List<Shown> rigs(Proposed found) {
        if (found instanceof Proposed.Found some) {
            return some.rigs();
        }
        return found instanceof Proposed.None none ? List.of(none.nearest()) : List.of();
    }

    private long made(Desk desk, String name, Shown chosen) {
        for (int number = 1; number < MOST_NAMES; number++) {
            Optional<Long> made = made(desk, name, number, chosen);
            if (made.isPresent()) {
                return made.get();
            }
        }
        throw new TakenException("all names are taken");
    }

    private Optional<Long> made(Desk desk, String name, int number, Shown chosen) {
        String end = number == 1 ? "" : " " + number;
        String whole = name.substring(0, Math.min(name.length(), LONGEST_NAME - end.length())) + end;
        try {
            return Optional.of(
                    drafts.make(desk.place(), whole, chosen.rig(), desk.me().personId()));
        } catch (TakenException taken) {
            return Optional.empty();
        }
    }

    private static String address(long enclosureId, long draftId) {
        return "/enclosures/" + enclosureId + "/desk/" + draftId + "/proposals";
    }

    private String say(String key) {
        return messages.getMessage(key, new Object[0], Locale.UK);
    }
}
