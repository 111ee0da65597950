package dapple.desk;

import dapple.desk.DeskReading.Against;
import dapple.desk.DeskReading.Read;
import dapple.draft.DraftFacts;
import dapple.light.geometry.Vec;
import dapple.people.Action;
import dapple.prediction.EnclosureScene;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Shows the desk of one draft: its form, and what is computed of it. */
@Component
class DeskPage {
    static final String VIEW = "desk/desk";
    static final String LOOK = "desk/look :: look";
    static final String AT = "desk/look :: at";

    private final DeskReading reading;
    private final DeskChoices choices;
    private final Looking looking;

    DeskPage(DeskReading reading, DeskChoices choices, Looking looking) {
        this.reading = reading;
        this.choices = choices;
        this.looking = looking;
    }

    Read read(Desk desk, DraftFacts draft, DeskForm form) {
        return reading.read(
                form, new Against(draft.rig(), desk.stock(), desk.installed().size()));
    }

    String show(Desk desk, DraftFacts draft, DeskForm form, Model model) {
        return show(desk, draft, form, read(desk, draft, form), model);
    }

    String show(Desk desk, DraftFacts draft, DeskForm form, Read read, Model model) {
        model.addAttribute("draft", draft);
        model.addAttribute("enclosure", desk.installed().enclosure());
        model.addAttribute("form", form);
        model.addAttribute("quantities", DeskForm.QUANTITIES);
        model.addAttribute("choices", choices.of(desk, form));
        model.addAttribute("changes", desk.me().may(Action.CHANGE_RIGS) && draft.isOpen());
        look(desk, form, read, model);
        return VIEW;
    }

    /** What is computed alone. */
    String look(Desk desk, DeskForm form, Read read, Model model) {
        PointsTried tried = PointsTried.of(form, desk.installed());
        Map<String, String> wrong = new LinkedHashMap<>(read.wrong());
        tried.wrong().forEach(field -> wrong.put(field, reading.say("desk.points.wrong")));
        model.addAttribute("wrong", wrong);
        model.addAttribute("tried", tried);
        model.addAttribute("unseen", form.field("unseen"));
        read.rig().ifPresent(rig -> {
            EnclosureScene scene = desk.under(rig).withPoints(tried.points());
            model.addAttribute("look", looking.at(desk.me(), scene, form.quantity(), form.isRough()));
            HereShown.asked(form).ifPresent(place -> at(scene, form, place, model));
        });
        return LOOK;
    }

    /** What falls on the place that the form names. */
    String at(Desk desk, DeskForm form, Read read, Model model) {
        read.rig().ifPresent(rig -> HereShown.asked(form).ifPresent(place -> at(desk.under(rig), form, place, model)));
        return AT;
    }

    private static void at(EnclosureScene scene, DeskForm form, Vec place, Model model) {
        model.addAttribute("lightHere", HereShown.at(scene, form.quantity(), place));
    }
}
