package dapple.walk;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.photo.PhotoFile;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestPart;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** Where phones send what was typed without signal. */
@RestController
@Allowed(Action.LOG_READINGS)
@RequestMapping("/walk")
class EntryController {
    private final EntryTaking taking;
    private final PhotoTaking photos;

    EntryController(EntryTaking taking, PhotoTaking photos) {
        this.taking = taking;
        this.photos = photos;
    }

    /** Who is signed in, and the token that each entry is sent with; a page kept from before has an old one. */
    @GetMapping("/ticket")
    Ticket ticket(@AuthenticationPrincipal SignedIn me, CsrfToken token) {
        return new Ticket(me.personId(), me.fullName(), token.getHeaderName(), token.getToken());
    }

    @PostMapping("/entries")
    Answer take(@AuthenticationPrincipal SignedIn me, @RequestBody TypedEntry typed) {
        return taking.take(me, typed);
    }

    @PostMapping("/photos")
    Answer takePhoto(
            @AuthenticationPrincipal SignedIn me,
            @RequestPart("entry") TypedEntry typed,
            @RequestPart("photo") Optional<MultipartFile> file) {
        return photos.take(me, typed, new PhotoFile(file));
    }

    @ExceptionHandler(IllegalArgumentException.class)
    @ResponseStatus(HttpStatus.UNPROCESSABLE_CONTENT)
    void refuse() {}

    record Ticket(long personId, String name, String header, String token) {}
}
