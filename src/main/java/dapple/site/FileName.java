package dapple.site;

import java.util.Locale;
import java.util.regex.Pattern;

/** Names of files that leave a site: the program, the site, what is in it. */
public final class FileName {
    private static final Pattern NOT_IN_NAMES = Pattern.compile("[^\\p{L}\\p{N}]+");

    private FileName() {}

    public static String of(SiteFacts site, String what, String ending) {
        return "dapple-" + part(site.name()) + "-" + part(what) + "." + ending;
    }

    private static String part(String text) {
        return NOT_IN_NAMES.matcher(text.strip()).replaceAll("-").toLowerCase(Locale.ROOT);
    }
}
