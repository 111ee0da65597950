package dapple.archive;

import dapple.people.FirstRun;
import dapple.site.NotFoundException;
import dapple.site.Open;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.validation.Valid;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.validation.Validator;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** The page on which an empty installation takes in a backup or a year's record. */
@Controller
@Open
@RequestMapping(RestoreController.PATH)
class RestoreController {
    static final String PATH = "/first-run/restore";

    private static final String PAGE = "archive/restore";

    private final FirstRun firstRun;
    private final TakingIn takingIn;
    private final Validator validator;

    RestoreController(FirstRun firstRun, TakingIn takingIn, Validator validator) {
        this.firstRun = firstRun;
        this.takingIn = takingIn;
        this.validator = validator;
    }

    @GetMapping
    String page(Model model) {
        requirePending();
        model.addAttribute("form", RestoreForm.empty());
        return PAGE;
    }

    @PostMapping
    String restore(
            @Valid @ModelAttribute("form") RestoreForm form,
            BindingResult errors,
            @RequestParam Optional<MultipartFile> file,
            Model model,
            HttpServletRequest request)
            throws IOException {
        requirePending();
        if (!errors.hasErrors() && !firstRun.isCode(form.code(), request.getRemoteAddr())) {
            errors.rejectValue("code", "first-run.code.wrong");
        }
        if (errors.hasErrors()) {
            return PAGE;
        }
        checkAdministrator(form, errors);
        return takeIn(form, errors, file, model);
    }

    private void checkAdministrator(RestoreForm form, BindingResult errors) {
        if (form.administrator().isNamed()) {
            errors.pushNestedPath("administrator");
            validator.validate(form.administrator(), errors);
            errors.popNestedPath();
        }
    }

    private String takeIn(RestoreForm form, BindingResult errors, Optional<MultipartFile> file, Model model)
            throws IOException {
        Path received = Files.createTempFile("dapple-restore", ".zip");
        try {
            receive(file, received);
            if (errors.hasErrors()) {
                takingIn.check(received);
                return PAGE;
            }
            TakenIn taken = takingIn.takeIn(received, form.person());
            return "redirect:/sign-in?" + (taken.isYear() ? "record" : "restored");
        } catch (ArchiveRefusedException refused) {
            if (refused.fault() == ArchiveFault.NAME_TAKEN) {
                errors.rejectValue("administrator.signInName", "restore.fault.NAME_TAKEN");
            } else {
                model.addAttribute("wrong", "restore.fault." + refused.fault());
            }
            return PAGE;
        } finally {
            Files.deleteIfExists(received);
        }
    }

    private static void receive(Optional<MultipartFile> file, Path to) throws IOException {
        MultipartFile sent = file.filter(one -> !one.isEmpty())
                .orElseThrow(() -> new ArchiveRefusedException(ArchiveFault.NO_FILE, "nothing was sent"));
        sent.transferTo(to.toFile());
    }

    private void requirePending() {
        if (!firstRun.isPending()) {
            throw new NotFoundException();
        }
    }
}
