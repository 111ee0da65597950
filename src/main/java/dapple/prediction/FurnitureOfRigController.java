package dapple.prediction;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.rig.FurnitureKind;
import dapple.site.Given;
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

/** Puts furniture into a rig, moves and removes it. */
@Controller
@Allowed(Action.CHANGE_RIGS)
@RequestMapping("/enclosures/{enclosureId}/rig/furniture")
class FurnitureOfRigController extends RigFormController {
    FurnitureOfRigController(RigDesk desk) {
        super(desk);
    }

    @GetMapping("/new")
    String put(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @RequestParam(defaultValue = "BOX") FurnitureKind kind,
            Model model) {
        model.addAttribute("kinds", FurnitureKind.values());
        model.addAttribute("kind", kind);
        return desk().open(
                        new Sheet(place, Task.PUT_FURNITURE, 0), FurnitureFields.empty(kind, desk().now(place)), model);
    }

    @PostMapping({"/new", "/new/preview"})
    String put(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @RequestParam(defaultValue = "BOX") FurnitureKind kind,
            @Valid @ModelAttribute("form") FurnitureForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        model.addAttribute("kinds", FurnitureKind.values());
        model.addAttribute("kind", kind);
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.PUT_FURNITURE, 0), form, exchange);
    }

    @GetMapping("/{furnitureId}/move")
    String move(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long furnitureId,
            Model model) {
        FurnitureForm form =
                FurnitureFields.of(place.rig().furniture(furnitureId).furniture(), desk().now(place));
        model.addAttribute("kind", Given.of(form.kind()));
        return desk().open(new Sheet(place, Task.MOVE_FURNITURE, furnitureId), form, model);
    }

    @PostMapping({"/{furnitureId}/move", "/{furnitureId}/move/preview"})
    String move(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long furnitureId,
            @RequestParam(defaultValue = "BOX") FurnitureKind kind,
            @Valid @ModelAttribute("form") FurnitureForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        model.addAttribute("kind", kind);
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.MOVE_FURNITURE, furnitureId), form, exchange);
    }

    @GetMapping("/{furnitureId}/removal")
    String remove(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long furnitureId,
            Model model) {
        long partId = place.rig().furniture(furnitureId).id();
        return desk().open(
                        new Sheet(place, Task.FURNITURE_OFF, partId), FurnitureOffForm.empty(desk().now(place)), model);
    }

    @PostMapping({"/{furnitureId}/removal", "/{furnitureId}/removal/preview"})
    String remove(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long furnitureId,
            @Valid @ModelAttribute("form") FurnitureOffForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.FURNITURE_OFF, furnitureId), form, exchange);
    }
}
