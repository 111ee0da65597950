package dapple.door;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.Given;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The codes of all doors, and the labels to print. */
@Controller
@Allowed(Action.ARRANGE_ENCLOSURES)
@RequestMapping("/doors")
class DoorsController {
    private final Doors doors;
    private final Enclosures enclosures;

    DoorsController(Doors doors, Enclosures enclosures) {
        this.doors = doors;
        this.enclosures = enclosures;
    }

    @ModelAttribute("list")
    DoorList list(@AuthenticationPrincipal SignedIn me) {
        return new DoorList(enclosures.inWalkingOrder(me.siteId()), doors.open(me.siteId()));
    }

    @ModelAttribute("sheets")
    LabelSheet[] sheets() {
        return LabelSheet.values();
    }

    @ModelAttribute("address")
    BaseAddress address() {
        return BaseAddress.ofRequest();
    }

    @GetMapping
    @Allowed(Action.SEE_ENCLOSURES)
    String page(Model model) {
        model.addAttribute("form", LabelsForm.empty());
        return "door/doors";
    }

    /** Gives those a code that have none yet. */
    @PostMapping("/labels")
    String choose(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute(name = "list", binding = false) DoorList list,
            @Valid @ModelAttribute("form") LabelsForm form,
            BindingResult errors) {
        if (isWrong(form, list, errors)) {
            return "door/doors";
        }
        List<Long> wanted =
                form.of(list.inUse()).stream().map(EnclosureFacts::id).toList();
        doors.coded(me.siteId(), wanted, me.personId());
        return "redirect:/doors/labels" + form.query();
    }

    @GetMapping("/labels")
    String preview(
            @ModelAttribute(name = "list", binding = false) DoorList list,
            @Valid @ModelAttribute("form") LabelsForm form,
            BindingResult errors,
            Model model) {
        if (isWrong(form, list, errors)) {
            return "door/doors";
        }
        model.addAttribute("wanted", form.of(list.inUse()));
        model.addAttribute("query", form.query());
        return "door/labels";
    }

    @GetMapping("/labels.pdf")
    ResponseEntity<byte[]> print(
            @ModelAttribute(name = "list", binding = false) DoorList list,
            @Valid @ModelAttribute("form") LabelsForm form,
            BindingResult errors) {
        if (isWrong(form, list, errors)) {
            return ResponseEntity.badRequest().build();
        }
        List<Label> labels = list.labels(form.of(list.inUse()), BaseAddress.ofRequest());
        ContentDisposition shown =
                ContentDisposition.inline().filename("door-labels.pdf").build();
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(HttpHeaders.CONTENT_DISPOSITION, shown.toString())
                .body(LabelDocument.of(labels, Given.of(form.sheet()), Given.of(form.first())));
    }

    /** What could not even be read leaves no form. */
    private static boolean isWrong(LabelsForm form, DoorList list, BindingResult errors) {
        if (errors.getTarget() != null) {
            form.check(list.inUse(), errors);
        }
        return errors.hasErrors();
    }
}
