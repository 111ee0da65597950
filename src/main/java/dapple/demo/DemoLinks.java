package dapple.demo;

import org.springframework.context.annotation.Profile;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells pages that this is the demo, for what only the demo can do. */
@ControllerAdvice
@Profile("demo")
class DemoLinks {
    @ModelAttribute("mayBeReset")
    boolean mayBeReset() {
        return true;
    }
}
