package dapple.housing;

import java.util.regex.Pattern;

/** Reads ids from an address; what is none is 0, which nothing has. */
final class Asked {
    private static final Pattern ID = Pattern.compile("[0-9]{1,18}");

    private Asked() {}

    static long id(String text) {
        return ID.matcher(text).matches() ? Long.parseLong(text) : 0;
    }
}
