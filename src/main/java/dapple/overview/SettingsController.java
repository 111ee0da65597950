package dapple.overview;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Histories;
import dapple.people.SignedIn;
import dapple.site.Formats;
import dapple.site.HistoryHead;
import dapple.site.RepeatsAsked;
import dapple.site.Settings;
import dapple.site.Sites;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** What a site settles where no source does. */
@Controller
@RequestMapping("/settings")
class SettingsController {
    private final Sites sites;
    private final Histories histories;
    private final Formats formats;
    private final MessageSource messages;

    SettingsController(Sites sites, Histories histories, Formats formats, MessageSource messages) {
        this.sites = sites;
        this.histories = histories;
        this.formats = formats;
        this.messages = messages;
    }

    @ModelAttribute("usual")
    List<SettingLine> usual() {
        return SettingLine.of(Settings.USUAL, formats);
    }

    @ModelAttribute("switches")
    List<SettingLine.Switch> switches() {
        return SettingLine.switches(Settings.USUAL);
    }

    @ModelAttribute("repeats")
    RepeatsAsked[] repeats() {
        return RepeatsAsked.values();
    }

    @GetMapping
    @Allowed(Action.SETTLE)
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("form", SettingsForm.of(sites.settings(me.siteId()), sites.settingsVersion(me.siteId())));
        return "overview/settings";
    }

    /** A form made from an older state comes back with 409, both states on it, and the newer version to save over. */
    @PostMapping
    @Allowed(Action.SETTLE)
    String change(
            @AuthenticationPrincipal SignedIn me,
            @Valid @ModelAttribute("form") SettingsForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (!errors.hasErrors()) {
            form.check(errors);
        }
        if (errors.hasErrors()) {
            return "overview/settings";
        }
        try {
            sites.settle(me.siteId(), form.versionSeen(), form.settings());
            return "redirect:/settings?saved";
        } catch (ObjectOptimisticLockingFailureException changedMeanwhile) {
            Settings now = sites.settings(me.siteId());
            model.addAttribute("theirs", SettingLine.of(now, formats));
            model.addAttribute("theirSwitches", SettingLine.switches(now));
            model.addAttribute("theirsRepeats", now.repeatsAsked());
            model.addAttribute("form", form.onVersion(sites.settingsVersion(me.siteId())));
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return "overview/settings";
        }
    }

    @GetMapping({"/history", "/history.csv"})
    @Allowed(Action.AUDIT)
    ModelAndView history(@AuthenticationPrincipal SignedIn me, @RequestParam(defaultValue = "1") int page) {
        String title = messages.getMessage("settings.title", null, LocaleContextHolder.getLocale());
        HistoryHead head = new HistoryHead(title, "settings", "/settings");
        return histories.show(me, head, sites.auditedSettings(me.siteId()), page);
    }
}
