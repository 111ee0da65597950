package dapple.exposure;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One animal with the light that it had where it lived, on a page and on a sheet to be filed. */
@Controller
@Allowed(Action.SEE_ANIMALS)
@RequestMapping("/animals/{animalId}")
class AnimalController {
    private final AnimalPage shown;

    AnimalController(AnimalPage shown) {
        this.shown = shown;
    }

    @GetMapping
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @RequestParam(required = false) @Nullable String from,
            @RequestParam(required = false) @Nullable String to,
            @RequestParam(defaultValue = "1") int page,
            Model model) {
        model.addAttribute("readings", shown.show(me, animalId, from, to, model).readings(Math.max(0, page - 1)));
        return "exposure/animal";
    }

    @GetMapping("/sheet")
    String sheet(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @RequestParam(required = false) @Nullable String from,
            @RequestParam(required = false) @Nullable String to,
            Model model) {
        shown.show(me, animalId, from, to, model);
        return "exposure/sheet";
    }
}
