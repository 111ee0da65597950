package dapple.leaving;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A name as it stands in texts, whole and in whatever case; replaced by another. */
final class NamePhrase {
    private final String text;
    private final String instead;
    private final Pattern pattern;

    private NamePhrase(String text, String instead) {
        this.text = text;
        this.instead = instead;
        this.pattern = Pattern.compile(
                "(?<![\\p{L}\\p{N}])" + Pattern.quote(text) + "(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Empty where a name is one plain word: it may be the name of an animal, or mean something else. */
    static Optional<NamePhrase> of(String name, String instead) {
        boolean isPlainWord = name.chars().allMatch(Character::isLetter);
        return isPlainWord ? Optional.empty() : Optional.of(new NamePhrase(name, instead));
    }

    String text() {
        return text;
    }

    boolean isIn(String words) {
        return pattern.matcher(words).find();
    }

    /** The words with the other name, cut where a column holds no more. */
    String replacedIn(String words, int most) {
        String replaced = pattern.matcher(words).replaceAll(Matcher.quoteReplacement(instead));
        return replaced.length() > most ? replaced.substring(0, most) : replaced;
    }
}
