package dapple.api;

import java.util.Optional;

/**
 * Why a request is not answered, as RFC 9457 says it.
 *
 * @param title the kind of problem, in a few words
 * @param detail what is wrong with this request, a plain sentence
 * @param pointer the member at fault, by JSON Pointer
 */
record Problem(int status, String title, String detail, Optional<String> pointer) {
    static Problem of(int status, String title, String detail) {
        return new Problem(status, title, detail, Optional.empty());
    }

    /** A member of the document is not as it must be. */
    static Problem fault(String pointer, String detail) {
        return new Problem(400, "The document cannot be used", detail, Optional.of(pointer));
    }

    /** More of something than is allowed. */
    static Problem tooMuch(String pointer, String detail) {
        return new Problem(413, "Too much for one request", detail, Optional.of(pointer));
    }

    static Problem tooLong(String detail) {
        return of(503, "Too long for one request", detail);
    }

    RefusedException refused() {
        return new RefusedException(this);
    }
}
