package dapple.prediction;

import dapple.enclosure.Enclosures;
import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.people.SignedIn;
import dapple.rig.Rig;
import dapple.rig.RigChanging;
import dapple.rig.RigDraft;
import dapple.rig.RigEntry;
import dapple.rig.RigRefusedException;
import dapple.rig.RigRefusedException.Reason;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import dapple.rig.StaleRigException;
import dapple.site.Formats;
import dapple.site.Given;
import dapple.site.When;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;

/** Opens the forms for rigs, shows what they would do, and saves them. */
@Component
class RigDesk {
    private static final String VIEW = "prediction/change";

    private final Rigs rigs;
    private final RigChanging changing;
    private final RigChoices choices;
    private final Lamps lamps;
    private final Enclosures enclosures;
    private final LimitsInForce limits;
    private final Formats formats;
    private final List<BesideForeseen> beside;
    private final Clock clock;

    RigDesk(
            Rigs rigs,
            RigChanging changing,
            RigChoices choices,
            Lamps lamps,
            Enclosures enclosures,
            LimitsInForce limits,
            Formats formats,
            List<BesideForeseen> beside,
            Clock clock) {
        this.rigs = rigs;
        this.changing = changing;
        this.choices = choices;
        this.lamps = lamps;
        this.enclosures = enclosures;
        this.limits = limits;
        this.formats = formats;
        this.beside = List.copyOf(beside);
        this.clock = clock;
    }

    RigPlace place(SignedIn me, long enclosureId) {
        return new RigPlace(
                me,
                enclosures.get(me.siteId(), enclosureId),
                rigs.at(me.siteId(), enclosureId, clock.instant()),
                rigs.lastRecorded(me.siteId(), enclosureId));
    }

    /** The present local time of a site, for a form that opens. */
    LocalDateTime now(RigPlace place) {
        return LocalDateTime.ofInstant(clock.instant(), place.me().zone()).truncatedTo(ChronoUnit.MINUTES);
    }

    String open(Sheet sheet, RigForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("entryKey", UUID.randomUUID());
        model.addAttribute("seen", sheet.place().lastRecorded());
        if (form instanceof TimedForm timed) {
            model.addAttribute("months", timed.timerFields().months().rows(false));
            model.addAttribute("kindShown", String.valueOf(timed.timerFields().kind()));
        }
        return show(sheet, model);
    }

    /** Nothing that was typed is lost, whatever the answer is. */
    String answer(Sheet sheet, RigForm form, Exchange exchange) {
        BindingResult errors = exchange.errors();
        exchange.model()
                .addAttribute(
                        "entryKey",
                        Optional.ofNullable(errors.getFieldValue("key")).orElse(""));
        exchange.model()
                .addAttribute(
                        "seen",
                        Optional.ofNullable(errors.getFieldValue("seen")).orElse(""));
        exchange.model().addAttribute("months", exchange.typedMonths());
        exchange.model().addAttribute("kindShown", exchange.timerKind());
        if (sheet.task().choosesLamp()) {
            exchange.model().addAttribute("chosenLamp", String.valueOf(errors.getFieldValue("lampId")));
        }
        Optional<Instant> at = errors.getTarget() == null ? Optional.empty() : checked(sheet, form, errors);
        if (errors.hasErrors() || at.isEmpty()) {
            return show(sheet, exchange.model());
        }
        return exchange.isPreview() ? foresee(sheet, form, exchange) : save(sheet, form, at.get(), exchange);
    }

    private Optional<Instant> checked(Sheet sheet, RigForm form, BindingResult errors) {
        form.check(errors);
        sheet.place().enclosure().size().ifPresent(size -> form.checkIn(size, errors));
        ZoneId zone = sheet.place().me().zone();
        Optional<Instant> at = When.until(clock.instant(), zone).read("at", form.at(), form.atWhich(), errors);
        sheet.partSince()
                .filter(since -> at.isPresent() && !at.get().isAfter(since))
                .ifPresent(since -> reject("at", Reason.CHANGED_LATER, "", formats.dayAndTime(since, zone), errors));
        return at;
    }

    private String foresee(Sheet sheet, RigForm form, Exchange exchange) {
        RigPlace place = sheet.place();
        if (Given.of(form.seen()) != place.lastRecorded()) {
            return conflict(sheet, exchange);
        }
        long siteId = place.me().siteId();
        long enclosureId = place.enclosure().id();
        Map<Long, LampFacts> byId = lamps.byId(siteId);
        Instant now = clock.instant();
        Rig then = new RigDraft(byId, now).after(place.rig(), form.step(sheet.partId()));
        PointLimits inForce = limits.at(siteId, enclosureId, now);
        exchange.model()
                .addAttribute(
                        "foreseen",
                        Foresight.compare(place.rig(), then, enclosures.pointsOf(siteId, enclosureId), inForce));
        beside.forEach(one -> exchange.model().addAllAttributes(one.say(place.me(), enclosureId, then)));
        return show(sheet, exchange.model());
    }

    private String save(Sheet sheet, RigForm form, Instant at, Exchange exchange) {
        try {
            changing.make(entry(sheet.place(), form, at), form.step(sheet.partId()));
            return "redirect:/enclosures/" + sheet.place().enclosure().id() + "/rig?changed";
        } catch (StaleRigException stale) {
            return conflict(sheet, exchange);
        } catch (RigRefusedException refused) {
            refuse(sheet, refused, exchange.errors());
            return show(sheet, exchange.model());
        }
    }

    private static RigEntry entry(RigPlace place, RigForm form, Instant at) {
        return new RigEntry(
                place.me().siteId(),
                place.enclosure().id(),
                at,
                Optional.ofNullable(form.note()).orElse("").strip(),
                place.me().personId(),
                Given.of(form.key()),
                Optional.of(Given.of(form.seen())));
    }

    /** The rig as it is now stands beside the form, which keeps what was typed and may be saved over it. */
    private String conflict(Sheet sheet, Exchange exchange) {
        RigPlace fresh = place(sheet.place().me(), sheet.place().enclosure().id());
        Sheet now = new Sheet(fresh, sheet.task(), sheet.partId());
        exchange.model().addAttribute("theirs", fresh.rig());
        exchange.model().addAttribute("scene", RigScene.of(fresh.rig()));
        exchange.model().addAttribute("seen", fresh.lastRecorded());
        exchange.response().setStatus(HttpServletResponse.SC_CONFLICT);
        return show(now, exchange.model());
    }

    private void refuse(Sheet sheet, RigRefusedException refused, BindingResult errors) {
        String when = refused.when()
                .map(instant -> formats.dayAndTime(instant, sheet.place().me().zone()))
                .orElse("");
        String field = sheet.task().choosesLamp() && refused.reason().name().startsWith("LAMP") ? "lampId" : "at";
        reject(field, refused.reason(), refused.where(), when, errors);
    }

    private static void reject(String field, Reason reason, String where, String when, BindingResult errors) {
        String code = "rig.refused." + reason;
        errors.rejectValue(field, code, new Object[] {where, when}, code);
    }

    private String show(Sheet sheet, Model model) {
        choices.addTo(model, sheet, String.valueOf(model.getAttribute("chosenLamp")));
        model.addAttribute("enclosure", sheet.place().enclosure());
        model.addAttribute("task", sheet.task());
        model.addAttribute("path", sheet.path());
        model.addAttribute("partName", sheet.partName());
        model.addAttribute("partSince", sheet.partSince());
        return VIEW;
    }
}
