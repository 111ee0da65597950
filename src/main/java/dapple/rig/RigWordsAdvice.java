package dapple.rig;

import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** The words for timers and gear, on every page that shows a rig. */
@ControllerAdvice
class RigWordsAdvice {
    private final TimerWords timers;
    private final GearWords gears;

    RigWordsAdvice(TimerWords timers, GearWords gears) {
        this.timers = timers;
        this.gears = gears;
    }

    @ModelAttribute("timerWords")
    TimerWords timers() {
        return timers;
    }

    @ModelAttribute("gearWords")
    GearWords gears() {
        return gears;
    }
}
