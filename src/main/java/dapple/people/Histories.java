package dapple.people;

import dapple.site.AuditedThing;
import dapple.site.Formats;
import dapple.site.History;
import dapple.site.HistoryWords;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** The page of a thing's history: who changed what, by name, in the time of the site. */
@Component
public class Histories {
    private final History history;
    private final People people;
    private final MessageSource messages;
    private final Formats formats;

    Histories(History history, People people, MessageSource messages, Formats formats) {
        this.history = history;
        this.people = people;
        this.messages = messages;
        this.formats = formats;
    }

    /**
     * Shows a page of a history, under the heading {@code head} of the model.
     *
     * @param page from 1
     * @return the name of the template
     */
    public String show(SignedIn me, AuditedThing thing, int page, Model model) {
        model.addAttribute("history", history.of(thing, page));
        model.addAttribute("words", new HistoryWords(thing, messages, formats, me.zone()));
        model.addAttribute("authors", people.names(me.siteId()));
        return "site/history";
    }
}
