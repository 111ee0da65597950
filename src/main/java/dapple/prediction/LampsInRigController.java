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

/** Fits, swaps, moves, times and feeds the lamps of a rig, and takes them out. */
@Controller
@Allowed(Action.CHANGE_RIGS)
@RequestMapping("/enclosures/{enclosureId}/rig/lamps")
class LampsInRigController extends RigFormController {
    LampsInRigController(RigDesk desk) {
        super(desk);
    }

    @GetMapping("/new")
    String fit(@ModelAttribute(name = "place", binding = false) RigPlace place, Model model) {
        return desk().open(new Sheet(place, Task.FIT, 0), FitForm.empty(desk().now(place)), model);
    }

    @PostMapping({"/new", "/new/preview"})
    String fit(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @Valid @ModelAttribute("form") FitForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.FIT, 0), form, exchange);
    }

    @GetMapping("/{fittingId}/swap")
    String swap(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            Model model) {
        return desk().open(
                        new Sheet(place, Task.SWAP, fittingId),
                        SwapForm.of(place.rig().fitting(fittingId), desk().now(place)),
                        model);
    }

    @PostMapping({"/{fittingId}/swap", "/{fittingId}/swap/preview"})
    String swap(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            @Valid @ModelAttribute("form") SwapForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.SWAP, fittingId), form, exchange);
    }

    @GetMapping("/{fittingId}/move")
    String move(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            Model model) {
        return desk().open(
                        new Sheet(place, Task.MOVE, fittingId),
                        MoveForm.of(place.rig().fitting(fittingId), desk().now(place)),
                        model);
    }

    @PostMapping({"/{fittingId}/move", "/{fittingId}/move/preview"})
    String move(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            @Valid @ModelAttribute("form") MoveForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.MOVE, fittingId), form, exchange);
    }

    @GetMapping("/{fittingId}/timer")
    String time(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            Model model) {
        return desk().open(
                        new Sheet(place, Task.TIMER, fittingId),
                        TimerForm.of(place.rig().fitting(fittingId), desk().now(place)),
                        model);
    }

    @PostMapping({"/{fittingId}/timer", "/{fittingId}/timer/preview"})
    String time(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            @Valid @ModelAttribute("form") TimerForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.TIMER, fittingId), form, exchange);
    }

    @GetMapping("/{fittingId}/gear")
    String gear(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            Model model) {
        return desk().open(
                        new Sheet(place, Task.GEAR, fittingId),
                        GearForm.of(place.rig().fitting(fittingId), desk().now(place)),
                        model);
    }

    @PostMapping({"/{fittingId}/gear", "/{fittingId}/gear/preview"})
    String gear(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            @Valid @ModelAttribute("form") GearForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.GEAR, fittingId), form, exchange);
    }

    @GetMapping("/{fittingId}/removal")
    String takeOut(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            Model model) {
        long partId = place.rig().fitting(fittingId).id();
        return desk().open(new Sheet(place, Task.TAKE_OUT, partId), TakeOutForm.empty(desk().now(place)), model);
    }

    @PostMapping({"/{fittingId}/removal", "/{fittingId}/removal/preview"})
    String takeOut(
            @ModelAttribute(name = "place", binding = false) RigPlace place,
            @PathVariable long fittingId,
            @Valid @ModelAttribute("form") TakeOutForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Exchange exchange = new Exchange(errors, model, request, response);
        return desk().answer(new Sheet(place, Task.TAKE_OUT, fittingId), form, exchange);
    }
}
