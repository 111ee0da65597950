package dapple.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/** A font of every PDF reader. It has the letters of western Europe; for others something like them stands, or a question mark. */
public final class PdfFont {
    private static final float SMALLEST_POINTS = 6;
    private static final float STEP_POINTS = 0.5F;
    private static final float UNITS_PER_POINT = 1000;
    private static final String NOT_IN_THE_FONT = "?";
    private static final String CUT = "...";

    /** Letters that are no base letter with a mark upon it. */
    private static final Map<String, String> BARRED =
            Map.of("Ł", "L", "ł", "l", "Đ", "D", "đ", "d", "Ħ", "H", "ħ", "h", "ı", "i", "Ŧ", "T", "ŧ", "t");

    private final PDFont font;

    private PdfFont(FontName name) {
        this.font = new PDType1Font(name);
    }

    public static PdfFont plain() {
        return new PdfFont(FontName.HELVETICA);
    }

    public static PdfFont bold() {
        return new PdfFont(FontName.HELVETICA_BOLD);
    }

    /** In which every character is as wide as any other. */
    public static PdfFont even() {
        return new PdfFont(FontName.COURIER_BOLD);
    }

    public PDFont font() {
        return font;
    }

    /** A text as the font can show it. */
    public String printable(String text) {
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
    public Fitted fit(String text, float mostPoints, float widthPoints) {
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

    /** The text in lines that fit into a width, broken between words; a word that is longer than a line is cut. */
    public List<String> wrap(String text, float size, float widthPoints) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : printable(text).split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size) > widthPoints) {
                lines.add(line);
                longer = word;
            }
            line = cut(longer, size, widthPoints);
        }
        lines.add(line);
        return lines;
    }

    private float width(String text, float size) {
        try {
            return font.getStringWidth(text) / UNITS_PER_POINT * size;
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read a font", cause);
        }
    }

    /** A text with the size that it is set in. */
    public record Fitted(String text, PdfFont font, float points) {}
}
