package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** Every page can be used by everybody, on a phone and at a desk, by day and in the night house. */
@BrowserTest
class EveryPageIT {
    private static final String TURN = "document.documentElement.dataset.scheme = arguments[0];";

    /** Routes that are tried elsewhere, and where. */
    private static final Map<String, String> ELSEWHERE = Map.ofEntries(
            Map.entry("/first-run", "FirstRunIT, on an empty installation"),
            Map.entry("/backups/{day}", "no page but a file; BackupPagesTest"),
            Map.entry("/first-run/restore", "only while empty; FirstRunIT"),
            Map.entry("/records/year", "no page but a file; RecordsPagesTest"),
            Map.entry("/doors/labels.pdf", "no page but a document; DoorPagesTest"),
            Map.entry("/people/{personId}/kept.json", "no page but a document; ErasurePagesTest"),
            Map.entry("/photos/{photoId}", "no page but a picture; PhotoPagesTest"),
            Map.entry("/photos/{photoId}/small", "no page but a picture; PhotoPagesTest"),
            Map.entry("/enclosures/{enclosureId}/scene.json", "no page but a document; RigPagesTest"),
            Map.entry(
                    "/meters/{meterId}/calibrations/{calibrationId}/file", "no page but a file; CertificatesPagesTest"),
            Map.entry("/records/import/{runId}", "ImportIT, which sends a file first"),
            Map.entry("/records/import/{runId}/try", "ImportIT, which sends a file first"),
            Map.entry("/walk/ticket", "no page but a document; EntriesPagesTest"),
            Map.entry("/review/standing", "a part of /review; SliceIT, which has it renew itself"));

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping routes;

    @AfterEach
    void backToDay() {
        browser.scheme("day");
    }

    @Test
    void everyRouteIsTried() {
        Set<String> tried = new TreeSet<>(ELSEWHERE.keySet());
        new DemoViews(ids).routes().forEach(view -> tried.add(view.name()));
        assertThat(tried)
                .as("a new page gets a line in DemoViews, by which it is tried with all the others")
                .isEqualTo(pages());
    }

    /** What our own controllers answer to GET, without lists as files: CsvPagesTest. */
    private Set<String> pages() {
        return routes.getHandlerMethods().entrySet().stream()
                .filter(route -> isOurs(route.getValue()) && isGet(route.getKey()))
                .flatMap(route -> route.getKey().getPatternValues().stream())
                .filter(pattern -> !pattern.endsWith(".csv"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean isOurs(HandlerMethod method) {
        return method.getBeanType().getPackageName().startsWith("dapple");
    }

    private static boolean isGet(RequestMappingInfo route) {
        Set<RequestMethod> methods = route.getMethodsCondition().getMethods();
        return methods.isEmpty() || methods.contains(RequestMethod.GET);
    }

    @TestFactory
    Stream<DynamicTest> everyPageKeepsTheRules() {
        DemoViews views = new DemoViews(ids);
        return Stream.of(views.routes(), views.others(), views.wrongForms(), views.errors())
                .flatMap(List::stream)
                .map(view -> DynamicTest.dynamicTest(view.name(), () -> keepsTheRules(view)));
    }

    /**
     * Comes to the page once, on a phone in the night house, then looks at it at a desk by day. By the colours it is judged on
     * one of the two, by turns; on both with {@code -Devery.side=true}.
     */
    private void keepsTheRules(View view) {
        SoftAssertions found = new SoftAssertions();
        browser.at(390, 844).scheme("night").complaints();
        view.show(browser);
        found.assertThat(browser.status()).as(view.name() + ": status").isEqualTo(view.status());
        found.assertThat(browser.run("return document.documentElement.dataset.scheme;"))
                .isEqualTo("night");
        boolean isPhoneAskedEverything = view.name().length() % 2 == 0;
        found.assertThat(broken(isPhoneAskedEverything))
                .as(view.name() + ": phone, night")
                .isEmpty();
        browser.run(TURN, "day");
        browser.at(1280, 800);
        found.assertThat(broken(!isPhoneAskedEverything))
                .as(view.name() + ": desk, day")
                .isEmpty();
        found.assertThat(browser.complaints())
                .filteredOn(complaint -> !complaint.contains("status of " + view.status()))
                .as(view.name() + ": console")
                .isEmpty();
        found.assertAll();
    }

    /** One size is asked everything, the other what a size can change: both show the same elements. */
    private List<String> broken(boolean isAskedEverything) {
        return isAskedEverything || Boolean.getBoolean("every.side")
                ? PageRules.brokenBy(browser)
                : PageRules.brokenByAnotherSize(browser);
    }
}
