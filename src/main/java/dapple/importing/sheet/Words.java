package dapple.importing.sheet;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The words of sheets, of several languages: what columns are called, and what stands in them. {@code importing/columns.csv} */
public final class Words {
    private static final String TABLE = "/importing/columns.csv";
    private static final int MOST_APART = 2;
    private static final int LETTERS_A_SLIP = 4;
    private static final int LONGEST_NAME = 100;
    private static final Words ALL = read();

    /** By kind, which is "column", "role", "quantity", "sex" and so on, then by normalised word. */
    private final Map<String, Map<String, String>> byKind = new HashMap<>();

    private Words() {}

    static Words all() {
        return ALL;
    }

    private static Words read() {
        Words words = new Words();
        try (InputStream table = Words.class.getResourceAsStream(TABLE)) {
            if (table == null) {
                throw new IllegalStateException(TABLE + " is missing");
            }
            CsvReader.builder().ofNamedCsvRecord(table, StandardCharsets.UTF_8).forEach(row -> words.add(row));
            return words;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void add(NamedCsvRecord row) {
        Map<String, String> words = byKind.computeIfAbsent(row.getField("kind"), kind -> new TreeMap<>());
        Arrays.stream(row.getField("words").split("\\|", -1))
                .map(Words::normalised)
                .forEach(word -> {
                    if (words.put(word, row.getField("means")) != null) {
                        throw new IllegalStateException(
                                word + " stands twice among the words of " + row.getField("kind"));
                    }
                });
    }

    /** All words of a kind, each with what it means. */
    public static Map<String, String> of(String kind) {
        return Map.copyOf(ALL.words(kind));
    }

    Map<String, String> words(String kind) {
        return byKind.getOrDefault(kind, Map.of());
    }

    Optional<String> find(String kind, String word) {
        return Optional.ofNullable(words(kind).get(normalised(word)));
    }

    /** The word of a kind that a text is by its constant, or by what people call it. */
    public static <E extends Enum<E>> Optional<E> find(String kind, Class<E> type, String word) {
        String plain = normalised(word);
        return ALL.find(kind, word)
                .or(() -> Optional.of(plain.replace(' ', '_').toUpperCase(Locale.ROOT)))
                .flatMap(name -> Arrays.stream(type.getEnumConstants())
                        .filter(one -> one.name().equals(name))
                        .findFirst());
    }

    /** What columns may be meant by a name that is slightly wrong, nearest first. */
    List<String> near(String kind, String word) {
        String plain = normalised(word);
        int most = Math.min(MOST_APART, plain.length() / LETTERS_A_SLIP);
        if (plain.length() > LONGEST_NAME || most == 0) {
            return List.of();
        }
        return words(kind).entrySet().stream()
                .map(entry -> Map.entry(Slips.between(plain, entry.getKey()), entry.getValue()))
                .filter(entry -> entry.getKey() <= most)
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .distinct()
                .toList();
    }

    /** Small letters and digits, without accents, single spaces between. */
    public static String normalised(String word) {
        String cut = word.length() > LONGEST_NAME ? word.substring(0, LONGEST_NAME) : word;
        String plain = Normalizer.normalize(cut.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFKD);
        return plain.replaceAll("\\p{M}", "")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
