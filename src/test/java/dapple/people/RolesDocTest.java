package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.stereotype.Controller;
import org.springframework.util.ClassUtils;
import org.springframework.web.bind.annotation.RequestMapping;

/** Keeps the tables of {@code docs/roles.md} the same as the program; {@code -Dwrite.docs=true} writes them anew. */
class RolesDocTest {
    private static final Path DOC = Path.of("docs", "roles.md");
    private static final String BEGIN = "<!-- written by RolesDocTest -->\n";
    private static final String END = "<!-- end -->\n";

    @Test
    void saysWhatTheProgramDoes() throws IOException {
        String doc = Files.readString(DOC);
        String before = doc.substring(0, doc.indexOf(BEGIN) + BEGIN.length());
        String after = doc.substring(doc.indexOf(END));
        String expected = before + tables() + after;
        if (Boolean.getBoolean("write.docs")) {
            Files.writeString(DOC, expected);
        }
        assertThat(doc).isEqualTo(expected);
    }

    private static String tables() {
        return actions() + "\n" + routes();
    }

    private static String actions() {
        String heads = Stream.of(Role.values()).map(RolesDocTest::words).collect(Collectors.joining(" | "));
        String rule = Stream.of(Role.values()).map(role -> "---").collect(Collectors.joining(" | "));
        String rows = Stream.of(Action.values())
                .map(action -> "| " + words(action) + " | "
                        + Stream.of(Role.values())
                                .map(role -> action.isAllowedTo(role) ? "yes" : "–")
                                .collect(Collectors.joining(" | "))
                        + " |\n")
                .collect(Collectors.joining());
        return "| action | " + heads + " |\n| --- | " + rule + " |\n" + rows;
    }

    private static String routes() {
        Map<String, String> rows = new TreeMap<>();
        ClassPathScanningCandidateComponentProvider scanner = new ClassPathScanningCandidateComponentProvider(false);
        scanner.addIncludeFilter(new AnnotationTypeFilter(Controller.class));
        scanner.findCandidateComponents("dapple").stream()
                .map(found -> ClassUtils.resolveClassName(String.valueOf(found.getBeanClassName()), null))
                .forEach(controller -> Stream.of(controller.getDeclaredMethods())
                        .filter(method -> AnnotatedElementUtils.hasAnnotation(method, RequestMapping.class))
                        .flatMap(method -> RouteRow.of(controller, method))
                        .forEach(row -> rows.put(row.path(), row.asked())));
        return "| route | action |\n| --- | --- |\n"
                + rows.entrySet().stream()
                        .map(row -> "| `" + row.getKey() + "` | " + row.getValue() + " |\n")
                        .collect(Collectors.joining());
    }

    private static String words(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private record RouteRow(String path, String asked) {
        static Stream<RouteRow> of(Class<?> controller, Method method) {
            RequestMapping mapping = AnnotatedElementUtils.findMergedAnnotation(method, RequestMapping.class);
            String verb = mapping == null
                    ? ""
                    : Stream.of(mapping.method()).map(Enum::name).collect(Collectors.joining());
            Allowed allowed = AnnotatedElementUtils.findMergedAnnotation(method, Allowed.class);
            Allowed byClass = AnnotatedElementUtils.findMergedAnnotation(controller, Allowed.class);
            Allowed asked = allowed == null ? byClass : allowed;
            String action = asked == null ? "open, without sign-in" : words(asked.value());
            return paths(AnnotatedElementUtils.findMergedAnnotation(controller, RequestMapping.class))
                    .flatMap(base -> paths(mapping).map(path -> new RouteRow(base + path + " " + verb, action)));
        }

        /** A method may answer on several paths. */
        private static Stream<String> paths(@Nullable RequestMapping mapping) {
            return mapping == null || mapping.path().length == 0 ? Stream.of("") : Stream.of(mapping.path());
        }
    }
}
