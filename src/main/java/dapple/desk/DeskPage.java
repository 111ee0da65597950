package dapple.desk;

import dapple.desk.DeskReading.Against;
import dapple.desk.DeskReading.Read;
import dapple.draft.DraftFacts;
import dapple.draft.DraftRig;
import dapple.people.Action;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Shows the desk of one draft: its form, and what is computed of it. */
@Component
class DeskPage {
    static final String VIEW = "desk/desk";
    static final String LOOK = "desk/look :: look";

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
        model.addAttribute("wrong", read.wrong());
        read.rig().ifPresent(rig -> model.addAttribute("look", look(desk, rig, form)));
        return LOOK;
    }

    private Look look(Desk desk, DraftRig rig, DeskForm form) {
        return looking.at(desk.under(rig), form.quantity());
    }
}
