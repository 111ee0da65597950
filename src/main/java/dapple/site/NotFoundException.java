package dapple.site;

import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** There is no such thing, or none that the asking person's site owns: the page is 404 either way. */
@ResponseStatus(HttpStatus.NOT_FOUND)
public class NotFoundException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public NotFoundException() {
        super("not found in this site");
    }
}
