package dapple.process;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.process.PlainBrowser.Page;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo with its readings, and with a hundred times as many that come in as a sheet: how long the sheet takes, how long
 * pages take then, and a year's record. Not part of the build; see docs/performance.md.
 */
class CollectionMeasure {
    private static final int TIMES = Integer.getInteger("measure.times", 100);
    /** As the program is older when it is asked the second time, it must have learnt all that it will before the first. */
    private static final int WARM = 150;

    private static final int LOOKS = 41;
    private static final ZoneId ZONE = ZoneId.of(System.getProperty("measure.zone", "Europe/London"));
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mmxxx").withZone(ZONE);

    @Test
    void aHundredTimesTheReadings(@TempDir Path data, @TempDir Path saved) throws Exception {
        try (Program program = Program.start(data, "--spring.profiles.active=demo")) {
            PlainBrowser supervisor = new PlainBrowser(program.address());
            supervisor.signIn("supervisor", "dapple");
            PlainBrowser administrator = new PlainBrowser(program.address());
            administrator.signIn("admin", "dapple");
            Path backup = backup(administrator, saved);
            Map<String, String> pages = pages(supervisor);
            ReadingKeeper keeper = ReadingKeeper.signedIn(program.address(), 0, 1);
            Map<String, Double> few = timed(supervisor, pages, keeper);
            Path sheet = sheet(backup, saved.resolve("readings.zip"));
            tell("import of " + Files.size(sheet) + " bytes", imported(supervisor, sheet));
            Map<String, Double> many = timed(supervisor, pages, keeper);
            many.forEach((page, took) -> System.out.printf(
                    "MEASURED %s: %.1f ms, %.1f ms before, ratio %.2f%n",
                    page, took, of(few, page), took / of(few, page)));
            Instant begun = Instant.now();
            Path record = supervisor.save("/records/year?from=last-12-months", saved.resolve("record.zip"));
            tell("a year's record of " + Files.size(record) + " bytes", Duration.between(begun, Instant.now()));
            assertThat(Files.size(record)).isPositive();
        }
    }

    private static void tell(String what, Duration took) {
        System.out.println("MEASURED " + what + " in " + took.toMillis() + " ms");
    }

    private static Path backup(PlainBrowser administrator, Path saved) throws IOException, InterruptedException {
        administrator.post(
                "/backups", Map.of("_csrf", administrator.get("/backups").field("_csrf")));
        String made = "href=\"(/backups/[0-9-]+)\"";
        Page list = administrator.get("/backups");
        while (!list.body().matches("(?s).*" + made + ".*")) {
            Thread.sleep(500);
            list = administrator.get("/backups");
        }
        return administrator.save(list.first(made), saved.resolve("backup.zip"));
    }

    private static Map<String, String> pages(PlainBrowser supervisor) throws IOException, InterruptedException {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("Today", "/");
        pages.put("Review", "/review");
        pages.put("an enclosure", supervisor.get("/review").first("href=\"(/enclosures/\\d+)\""));
        pages.put("an animal", supervisor.get("/animals").first("href=\"(/animals/\\d+)\""));
        return pages;
    }

    /** Medians in milliseconds, by turns; then the same where before each look somebody else has stored a reading. */
    private static Map<String, Double> timed(PlainBrowser person, Map<String, String> pages, ReadingKeeper keeper)
            throws IOException, InterruptedException {
        looks(person, pages, WARM, () -> {});
        Map<String, Double> medians = new LinkedHashMap<>();
        looks(person, pages, LOOKS, () -> {}).forEach((page, times) -> medians.put(page, median(times)));
        looks(person, pages, LOOKS, keeper::readOnce)
                .forEach((page, times) -> medians.put(page + ", after a reading", median(times)));
        return medians;
    }

    private static Map<String, List<Long>> looks(
            PlainBrowser person, Map<String, String> pages, int looks, Before before)
            throws IOException, InterruptedException {
        Map<String, List<Long>> times = new LinkedHashMap<>();
        for (int look = 0; look < looks; look++) {
            for (Map.Entry<String, String> page : pages.entrySet()) {
                before.happens();
                times.computeIfAbsent(page.getKey(), name -> new ArrayList<>()).add(look(person, page.getValue()));
            }
        }
        return times;
    }

    private static double median(List<Long> times) {
        return times.stream().sorted().toList().get(times.size() / 2) / 1e6;
    }

    private static long look(PlainBrowser person, String path) throws IOException, InterruptedException {
        long begun = System.nanoTime();
        assertThat(person.get(path).status()).isEqualTo(200);
        return System.nanoTime() - begun;
    }

    /** What comes before a look. */
    private interface Before {
        void happens() throws IOException, InterruptedException;
    }

    private static Duration imported(PlainBrowser supervisor, Path sheet) throws IOException, InterruptedException {
        Page page = supervisor.get("/records/import");
        String run = supervisor
                .post("/records/import", Map.of("_csrf", page.field("_csrf")), sheet)
                .location()
                .orElseThrow();
        supervisor.post(run + "/columns", Map.of("_csrf", supervisor.get(run).field("_csrf")));
        Page tried = settled(supervisor, run);
        assertThat(tried.body()).doesNotContain("name=\"leaveOut\"");
        Instant begun = Instant.now();
        supervisor.post(run, Map.of("_csrf", tried.field("_csrf")));
        settled(supervisor, run);
        return Duration.between(begun, Instant.now());
    }

    private static Page settled(PlainBrowser supervisor, String run) throws IOException, InterruptedException {
        Page page = supervisor.get(run + "/try");
        while (page.body().contains("<progress")) {
            Thread.sleep(250);
            page = supervisor.get(run + "/try");
        }
        return page;
    }

    /** Each reading again between it and the one a week before it, at the same place, with the same meter. */
    private static Path sheet(Path backup, Path to) throws IOException {
        try (ZipFile zip = new ZipFile(backup.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
            Map<String, Row> points = byId(rows(zip, "measuring_point"));
            Map<String, Row> enclosures = byId(rows(zip, "enclosure"));
            Map<String, Row> meters = byId(rows(zip, "meter"));
            out.putNextEntry(new ZipEntry("readings.csv"));
            Writer csv = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            csv.write("Enclosure,Point,Meter,Measured on,Amount\r\n");
            for (Row reading : rows(zip, "reading")) {
                Row point = of(points, reading.cell("point_id"));
                Row meter = of(meters, reading.cell("meter_id"));
                if (meter.cell("quantity").contains("TEMPERATURE")) {
                    continue;
                }
                Instant at = OffsetDateTime.parse(reading.cell("taken_at").replace(' ', 'T'))
                        .toInstant();
                for (int time = 1; time < TIMES; time++) {
                    csv.write(String.join(
                            ",",
                            of(enclosures, point.cell("enclosure_id")).cell("code"),
                            point.cell("code"),
                            meter.cell("code"),
                            MINUTE.format(at.minus(
                                    Duration.ofDays(7).multipliedBy(time).dividedBy(TIMES))),
                            reading.cell("amount")));
                    csv.write("\r\n");
                }
            }
            csv.flush();
        }
        return to;
    }

    private static Map<String, Row> byId(List<Row> rows) {
        return rows.stream().collect(Collectors.toMap(row -> row.cell("id"), row -> row));
    }

    private static <T> T of(Map<String, T> all, String key) {
        return Optional.ofNullable(all.get(key)).orElseThrow();
    }

    private record Row(Map<String, String> cells) {
        String cell(String name) {
            return of(cells, name);
        }
    }

    /** Of a table whose named columns hold no commas before those that are asked for. */
    private static List<Row> rows(ZipFile zip, String table) throws IOException {
        ZipEntry entry = zip.stream()
                .filter(one -> one.getName().endsWith("/" + table + ".csv")
                        || one.getName().equals(table + ".csv"))
                .findFirst()
                .orElseThrow();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(zip.getInputStream(entry), StandardCharsets.UTF_8))) {
            List<String> names = cells(lines.readLine().replace("\ufeff", ""));
            return lines.lines()
                    .map(CollectionMeasure::cells)
                    .filter(cells -> cells.size() == names.size())
                    .map(cells -> new Row(
                            IntStream.range(0, names.size()).boxed().collect(Collectors.toMap(names::get, cells::get))))
                    .toList();
        }
    }

    private static List<String> cells(String line) {
        return List.of(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)).stream()
                .map(cell -> cell.replaceAll("^\"|\"$", ""))
                .toList();
    }
}
