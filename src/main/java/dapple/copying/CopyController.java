package dapple.copying;

import dapple.enclosure.Enclosures;
import dapple.enclosure.RoomFacts;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.TakenException;
import dapple.site.When;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Builds enclosures like one that is there. */
@Controller
@Allowed(Action.COPY_ENCLOSURES)
@RequestMapping("/enclosures/{enclosureId}/copy")
class CopyController {
    private static final String VIEW = "copying/copy";

    private final Copying copying;
    private final Enclosures enclosures;
    private final MessageSource messages;
    private final Clock clock;

    CopyController(Copying copying, Enclosures enclosures, MessageSource messages, Clock clock) {
        this.copying = copying;
        this.enclosures = enclosures;
        this.messages = messages;
        this.clock = clock;
    }

    @ModelAttribute("original")
    Original original(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        return copying.original(me.siteId(), enclosureId);
    }

    @ModelAttribute("rooms")
    List<RoomFacts> rooms(@AuthenticationPrincipal SignedIn me) {
        return enclosures.rooms(me.siteId());
    }

    @ModelAttribute("kinds")
    LampsOfCopies[] kinds() {
        return LampsOfCopies.values();
    }

    @GetMapping
    String page(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "original", binding = false) Original original,
            Model model) {
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), me.zone()).truncatedTo(ChronoUnit.MINUTES);
        model.addAttribute("form", CopyForm.empty(original.enclosure().roomId(), now));
        model.addAttribute("entryKey", UUID.randomUUID());
        return VIEW;
    }

    /** A form made from an older state comes back with 409, with the enclosure as it is now above what was typed. */
    @PostMapping
    String copy(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "original", binding = false) Original original,
            @Valid @ModelAttribute("form") CopyForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        model.addAttribute(
                "entryKey", Optional.ofNullable(errors.getFieldValue("key")).orElse(""));
        Optional<Instant> since = checked(me, original, form, errors);
        if (errors.hasErrors() || since.isEmpty()) {
            return VIEW;
        }
        CopyEntry entry = new CopyEntry(
                me.siteId(), original.enclosure().id(), me.personId(), Given.of(form.key()), Given.of(form.seen()));
        try {
            copying.make(entry, form.plan(since.get(), likeness(original)));
            return "redirect:/enclosures/" + entry.originalId() + "/copies/" + entry.key();
        } catch (CodeTakenException taken) {
            TypedCodes.reject(errors, "copying.codes.taken", taken.code());
        } catch (TakenException takenMeanwhile) {
            errors.rejectValue("codes", "copying.codes.taken-meanwhile");
        } catch (StaleOriginalException stale) {
            model.addAttribute("stale", true);
            response.setStatus(HttpServletResponse.SC_CONFLICT);
        }
        return VIEW;
    }

    private Optional<Instant> checked(SignedIn me, Original original, CopyForm form, BindingResult errors) {
        if (errors.getTarget() == null) {
            return Optional.empty();
        }
        Optional<Instant> since = When.until(clock.instant(), me.zone()).read("at", form.at(), form.atWhich(), errors);
        if (!errors.hasErrors()) {
            form.check(original, errors);
            requireRoom(me, form, errors);
        }
        return since;
    }

    private void requireRoom(SignedIn me, CopyForm form, BindingResult errors) {
        if (enclosures.rooms(me.siteId()).stream().noneMatch(room -> room.id() == Given.of(form.roomId()))) {
            errors.rejectValue("roomId", "copying.room.wrong");
        }
    }

    private String likeness(Original original) {
        return messages.getMessage(
                "copying.likeness", new Object[] {original.enclosure().code()}, Locale.ENGLISH);
    }
}
