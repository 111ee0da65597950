package dapple.walk;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.reading.CoverSaid;
import dapple.reading.Outcome;
import dapple.round.Rounds;
import java.time.LocalDate;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import tools.jackson.databind.json.JsonMapper;

/** The page that takes readings with or without signal: of one door, or of a round. */
@Controller
@Allowed(Action.LOG_READINGS)
class PhoneController {
    private final Sheets sheets;
    private final Rounds rounds;
    private final PhoneTexts texts;
    private final JsonMapper json;

    PhoneController(Sheets sheets, Rounds rounds, PhoneTexts texts, JsonMapper json) {
        this.sheets = sheets;
        this.rounds = rounds;
        this.texts = texts;
        this.json = json;
    }

    @GetMapping("/enclosures/{enclosureId}/on-phone")
    String door(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        model.addAttribute("back", "/enclosures/" + enclosureId);
        return show(sheets.ofDoor(me, enclosureId), model);
    }

    @GetMapping("/rounds/{planId}/walks/{dueOn}/on-phone")
    String round(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long planId,
            @PathVariable LocalDate dueOn,
            Model model) {
        model.addAttribute("back", "/rounds/" + planId + "/walks/" + dueOn);
        return show(sheets.ofWalk(me, rounds.walk(me, planId, dueOn)), model);
    }

    /** What a phone shows instead of a page that it has not kept. */
    @GetMapping("/walk/without-signal")
    String withoutSignal() {
        return "walk/without-signal";
    }

    private String show(Sheet sheet, Model model) {
        model.addAttribute("sheet", sheet);
        model.addAttribute("sheetText", text(sheet));
        model.addAttribute("texts", text(texts.all()));
        model.addAttribute("outcomes", Outcome.values());
        model.addAttribute("coverWords", CoverSaid.values());
        return "walk/on-phone";
    }

    /** Stands in a page: no text in it may end its element. */
    private String text(Object carried) {
        return json.writeValueAsString(carried).replace("<", "\\u003c");
    }
}
