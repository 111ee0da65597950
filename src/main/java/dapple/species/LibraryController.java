package dapple.species;

import dapple.people.Action;
import dapple.people.Allowed;
import java.util.List;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The library, searched by name. */
@Controller
class LibraryController {
    private static final int ROWS = 25;

    private final Library library;

    LibraryController(Library library) {
        this.library = library;
    }

    @GetMapping("/library")
    @Allowed(Action.SEE_STOCK)
    String page(@RequestParam(defaultValue = "") String name, @RequestParam(defaultValue = "1") int page, Model model) {
        List<Taxon> found = library.search(name);
        int last = Math.max(0, (found.size() - 1) / ROWS);
        PageRequest asked = PageRequest.of(Math.min(last, Math.max(0, page - 1)), ROWS);
        int from = (int) asked.getOffset();
        List<Taxon> shown = found.subList(from, Math.min(found.size(), from + ROWS));
        model.addAttribute("name", name);
        model.addAttribute("taxa", new PageImpl<>(shown, asked, found.size()));
        return "species/library";
    }
}
