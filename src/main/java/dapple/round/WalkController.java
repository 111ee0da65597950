package dapple.round;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.PersonFacts;
import dapple.people.SignedIn;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** One walk of a round: how far it is, to begin it, to give it to somebody else, to say why it is not walked. */
@Controller
@Allowed(Action.LOG_READINGS)
@RequestMapping("/rounds/{planId}/walks/{dueOn}")
class WalkController {
    private static final String PAGE = "round/walk";

    private final Rounds rounds;
    private final WalkKeeping keeping;
    private final People people;
    private final Clock clock;

    WalkController(Rounds rounds, WalkKeeping keeping, People people, Clock clock) {
        this.rounds = rounds;
        this.keeping = keeping;
        this.people = people;
        this.clock = clock;
    }

    @GetMapping
    @Allowed(Action.SEE_TODAY)
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long planId,
            @PathVariable LocalDate dueOn,
            Model model) {
        WalkFacts walk = rounds.walk(me, planId, dueOn);
        long version = walk.said().version();
        Optional<Excuse> excuse = walk.said().excuse();
        model.addAttribute("giving", new GiveForm(version, walk.givenTo().key()));
        model.addAttribute(
                "excusing",
                new NotWalkedForm(
                        version,
                        excuse.map(Excuse::reason).orElse(null),
                        excuse.map(Excuse::text).orElse("")));
        return show(me, walk, model);
    }

    /** Begins the walk, or goes on with it, on the page that needs no signal. */
    @PostMapping("/begin")
    String begin(@AuthenticationPrincipal SignedIn me, @PathVariable long planId, @PathVariable LocalDate dueOn) {
        keeping.begin(me, planId, dueOn);
        return "redirect:" + rounds.walk(me, planId, dueOn).path() + "/on-phone";
    }

    @PostMapping("/given")
    String give(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long planId,
            @PathVariable LocalDate dueOn,
            @Valid @ModelAttribute("giving") GiveForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Optional<GivenTo> to =
                errors.hasErrors() ? Optional.empty() : recipients(me).named(form.key());
        if (to.isEmpty()) {
            errors.rejectValue("to", "round.given.wrong");
            return again(me, rounds.walk(me, planId, dueOn), model);
        }
        try {
            keeping.give(me, new WalkKey(planId, dueOn), form.versionSeen(), to.get());
            return back(planId, dueOn);
        } catch (ObjectOptimisticLockingFailureException saidMeanwhile) {
            WalkFacts now = stale(me, planId, dueOn, model, response);
            model.addAttribute("giving", new GiveForm(now.said().version(), form.key()));
            return again(me, now, model);
        }
    }

    @PostMapping("/excuse")
    String excuse(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long planId,
            @PathVariable LocalDate dueOn,
            @Valid @ModelAttribute("excusing") NotWalkedForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (errors.getTarget() != null) {
            form.check(errors);
        }
        if (errors.hasErrors()) {
            return again(me, rounds.walk(me, planId, dueOn), model);
        }
        try {
            keeping.excuse(me, new WalkKey(planId, dueOn), form.versionSeen(), form.notWalked());
            return back(planId, dueOn);
        } catch (ObjectOptimisticLockingFailureException saidMeanwhile) {
            WalkFacts now = stale(me, planId, dueOn, model, response);
            model.addAttribute("excusing", new NotWalkedForm(now.said().version(), form.reason(), form.text()));
            return again(me, now, model);
        }
    }

    private WalkFacts stale(SignedIn me, long planId, LocalDate dueOn, Model model, HttpServletResponse response) {
        response.setStatus(HttpServletResponse.SC_CONFLICT);
        model.addAttribute("isStale", true);
        return rounds.walk(me, planId, dueOn);
    }

    /** The page with one form as it was typed, and the other as it stands. */
    private String again(SignedIn me, WalkFacts walk, Model model) {
        if (!model.containsAttribute("giving")) {
            model.addAttribute(
                    "giving", new GiveForm(walk.said().version(), walk.givenTo().key()));
        }
        if (!model.containsAttribute("excusing")) {
            model.addAttribute("excusing", new NotWalkedForm(walk.said().version(), null, ""));
        }
        return show(me, walk, model);
    }

    private String show(SignedIn me, WalkFacts walk, Model model) {
        List<PersonFacts> all = people.at(me.siteId());
        model.addAttribute("walk", walk);
        model.addAttribute("today", today(me));
        model.addAttribute("names", People.namesOf(all));
        model.addAttribute("recipients", Recipients.of(all, today(me)));
        model.addAttribute("reasons", Excuse.Reason.values());
        return PAGE;
    }

    private Recipients recipients(SignedIn me) {
        return Recipients.of(people.at(me.siteId()), today(me));
    }

    private static String back(long planId, LocalDate dueOn) {
        return "redirect:/rounds/" + planId + "/walks/" + dueOn;
    }

    private LocalDate today(SignedIn me) {
        return LocalDate.ofInstant(clock.instant(), me.zone());
    }
}
