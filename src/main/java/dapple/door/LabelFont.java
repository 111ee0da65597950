package dapple.door;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/** A font of every PDF reader. It has the letters of western Europe; for others something like them stands, or a question mark. */
final class LabelFont {
    private static final float SMALLEST_POINTS = 6;
    private static final float STEP_POINTS = 0.5F;
    private static final float UNITS_PER_POINT = 1000;
    private static final String NOT_IN_THE_FONT = "?";
    private static final String CUT = "...";

    /** Letters that are no base letter with a mark upon it. */
    private static final Map<String, String> BARRED =
            Map.of("Ł", "L", "ł", "l", "Đ", "D", "đ", "d", "Ħ", "H", "ħ", "h", "ı", "i", "Ŧ", "T", "ŧ", "t");

    private final PDFont font;

    private LabelFont(FontName name) {
        this.font = new PDType1Font(name);
    }

    static LabelFont plain() {
        return new LabelFont(FontName.HELVETICA);
    }

    static LabelFont bold() {
        return new LabelFont(FontName.HELVETICA_BOLD);
    }

    /** In which every character is as wide as any other. */
    static LabelFont even() {
        return new LabelFont(FontName.COURIER_BOLD);
    }

    PDFont font() {
        return font;
    }

    /** A text as the font can show it. */
    String printable(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .mapToObj(Character::toString)
                .map(this::printableCharacter)
                .collect(Collectors.joining());
    }

    private String printableCharacter(String character) {
        if (isShown(character)) {
            return character;
        }
        String plain = BARRED.getOrDefault(
                character, Normalizer.normalize(character, Normalizer.Form.NFKD).replaceAll("\\p{M}", ""));
        return !plain.isEmpty() && isShown(plain) ? plain : NOT_IN_THE_FONT;
    }

    private boolean isShown(String character) {
        try {
            return font.encode(character).length > 0;
        } catch (IllegalArgumentException notInTheFont) {
            return false;
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read a font", cause);
        }
    }

    /** The text in the largest size up to one in which it fits into a width; what is too long even so is cut. */
    Fitted fit(String text, float mostPoints, float widthPoints) {
        String shown = printable(text);
        float size = mostPoints;
        while (size > SMALLEST_POINTS && width(shown, size) > widthPoints) {
            size -= STEP_POINTS;
        }
        return new Fitted(cut(shown, size, widthPoints), this, size);
    }

    private String cut(String text, float size, float widthPoints) {
        if (width(text, size) <= widthPoints) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end) + CUT, size) > widthPoints) {
            end--;
        }
        return text.substring(0, end) + CUT;
    }

    private float width(String text, float size) {
        try {
            return font.getStringWidth(text) / UNITS_PER_POINT * size;
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read a font", cause);
        }
    }

    /** A text with the size that it is set in. */
    record Fitted(String text, LabelFont font, float points) {}
}
