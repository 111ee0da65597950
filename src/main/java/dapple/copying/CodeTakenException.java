package dapple.copying;

import dapple.site.TakenException;

/** The site has an enclosure with a code that a copy was to have. */
class CodeTakenException extends TakenException {
    private static final long serialVersionUID = 1;

    private final String code;

    CodeTakenException(String code) {
        super("the site has an enclosure with this code");
        this.code = code;
    }

    String code() {
        return code;
    }
}
