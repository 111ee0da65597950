package dapple.people;

import dapple.site.NotFoundException;
import dapple.site.Open;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.validation.Valid;
import java.time.ZoneId;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

/** The page on which an empty installation gets its site and its first administrator. */
@Controller
@Open
class FirstRunController {
    static final String PATH = "/first-run";

    private final FirstRun firstRun;

    FirstRunController(FirstRun firstRun) {
        this.firstRun = firstRun;
    }

    /** Those of places, and UTC: fixed offsets and names of old systems know nothing of a site's summer time. */
    @ModelAttribute("timeZones")
    List<String> timeZones() {
        return ZoneId.getAvailableZoneIds().stream()
                .filter(name -> name.equals("UTC") || name.contains("/"))
                .filter(name -> !name.startsWith("Etc/") && !name.startsWith("SystemV/"))
                .sorted()
                .toList();
    }

    @GetMapping(PATH)
    String page(Model model) {
        requirePending();
        model.addAttribute("form", FirstRunForm.empty());
        return "people/first-run";
    }

    @PostMapping(PATH)
    String begin(@Valid @ModelAttribute("form") FirstRunForm form, BindingResult errors, HttpServletRequest request) {
        requirePending();
        if (!errors.hasErrors() && !firstRun.isCode(form.code(), request.getRemoteAddr())) {
            errors.rejectValue("code", "first-run.code.wrong");
        }
        if (errors.hasErrors()) {
            return "people/first-run";
        }
        firstRun.begin(form.siteName(), ZoneId.of(form.timeZone()), form.administrator());
        return "redirect:/sign-in?begun";
    }

    private void requirePending() {
        if (!firstRun.isPending()) {
            throw new NotFoundException();
        }
    }
}
