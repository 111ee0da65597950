package dapple.prediction;

import dapple.people.Action;
import dapple.people.Allowed;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Puts cover over a rig, replaces it, adds and removes layers, takes it off. */
@Controller
@Allowed(Action.CHANGE_RIGS)
@RequestMapping("/enclosures/{enclosureId}/rig/cover")
class CoverOfRigController extends RigFormController {
    CoverOfRigController(RigDesk desk) {
        super(desk);
    }

    @GetMapping("/new")
    String put(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @RequestParam(defaultValue = "WEAVE") CoverKind kind,
            Model model) {
        model.addAttribute("kinds", CoverKind.values());
        model.addAttribute("kind", kind);
        return desk().open(new Sheet(place, Task.PUT_COVER, 0), CoverFields.empty(kind, desk().now(place)), model);
    }

    @PostMapping({"/new", "/new/preview"})
    String put(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @RequestParam(defaultValue = "WEAVE") CoverKind kind,
            @Valid @ModelAttribute("form") CoverForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        model.addAttribute("kinds", CoverKind.values());
        model.addAttribute("kind", kind);
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.PUT_COVER, 0), form, exchange);
    }

    @GetMapping("/{coverId}/replacement")
    String replace(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long coverId,
            @RequestParam(defaultValue = "WEAVE") CoverKind kind,
            Model model) {
        model.addAttribute("kinds", CoverKind.values());
        model.addAttribute("kind", kind);
        return desk().open(
                        new Sheet(place, Task.REPLACE_COVER, coverId),
                        CoverFields.inPlaceOf(place.rig().cover(coverId).cover(), kind, desk().now(place)),
                        model);
    }

    @PostMapping({"/{coverId}/replacement", "/{coverId}/replacement/preview"})
    String replace(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long coverId,
            @RequestParam(defaultValue = "WEAVE") CoverKind kind,
            @Valid @ModelAttribute("form") CoverForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        model.addAttribute("kinds", CoverKind.values());
        model.addAttribute("kind", kind);
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.REPLACE_COVER, coverId), form, exchange);
    }

    @GetMapping("/{coverId}/layers")
    String layer(
            @ModelAttribute(name = "place", binding = false) RigPlace place, @PathVariable long coverId, Model model) {
        return desk().open(
                        new Sheet(place, Task.LAYERS, coverId),
                        LayersForm.of(place.rig().cover(coverId), desk().now(place)),
                        model);
    }

    @PostMapping({"/{coverId}/layers", "/{coverId}/layers/preview"})
    String layer(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long coverId,
            @Valid @ModelAttribute("form") LayersForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.LAYERS, coverId), form, exchange);
    }

    @GetMapping("/{coverId}/removal")
    String takeOff(
            @ModelAttribute(name = "place", binding = false) RigPlace place, @PathVariable long coverId, Model model) {
        long partId = place.rig().cover(coverId).id();
        return desk().open(new Sheet(place, Task.COVER_OFF, partId), CoverOffForm.empty(desk().now(place)), model);
    }

    @PostMapping({"/{coverId}/removal", "/{coverId}/removal/preview"})
    String takeOff(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long coverId,
            @Valid @ModelAttribute("form") CoverOffForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.COVER_OFF, coverId), form, exchange);
    }
}
