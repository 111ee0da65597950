package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * The job that the program is for, from one person to the next: a round finds a point off target, whoever supervises
 * moves the lamp and sees first what that will do, a second round shows that it has helped, and the vet finds all of it at
 * the animal. Each size of screen has an enclosure of its own, which no other test touches.
 */
@BrowserTest
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class MainJobIT {
    /** The words of urgency, the most urgent first, as {@code docs/words.md} lists them. */
    private static final List<String> URGENCIES = List.of(
            "over the ceiling",
            "vet’s order not kept",
            "vet’s order not read yet",
            "no shade",
            "too strong",
            "too weak for long",
            "no target",
            "too weak",
            "may exceed the ceiling",
            "reading overdue",
            "round overdue",
            "borderline");

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    /**
     * One story. The limits are those of the demo's target for UV zone 3: basking 2.9 to 7.4, ceiling 8.0.
     *
     * @param found what the keeper first reads on the basking place
     * @param urgency what Review calls it
     * @param heightMetres how high the lamp hangs afterwards; before it is 0.59
     * @param raises whether that is higher, so that less is predicted than before
     */
    record Story(
            int width,
            int height,
            String enclosure,
            String animal,
            String found,
            String urgency,
            String heightMetres,
            boolean raises) {}

    static Stream<Story> stories() {
        return Stream.of(
                new Story(390, 844, "E15", "Nettle", "1.7", "too weak", "0.54", false),
                new Story(1280, 800, "E16", "Thrift", "9.4", "over the ceiling", "0.68", true));
    }

    @BeforeEach
    void startAfresh() {
        browser.scheme("day").complaints();
    }

    @AfterEach
    void nothingIsComplainedOf() {
        assertThat(browser.complaints()).as("in the browser's console").isEmpty();
    }

    @ParameterizedTest
    @MethodSource("stories")
    void aPointOffTargetIsFoundMendedAndReadAgain(Story story) {
        browser.at(story.width(), story.height());
        round(story, story.found(), story.urgency().equals("too weak") ? "too weak" : "Stop: over the ceiling");
        reviewShows(story);
        moveTheLamp(story);
        seeTheAlarms(story);
        round(story, "4.6", "on target");
        reviewIsClear(story);
        theVetFindsBoth(story);
    }

    /** Reads all three points, the basking place first; the others are as ever. */
    private void round(Story story, String basking, String answer) {
        browser.signInAs("keeper").open("/enclosures/" + ids.enclosure(story.enclosure()) + "/visit");
        log("P1 basking", basking, answer);
        browser.press("Next: P2");
        log("P2 gradient", "1.5", "Read P2 again");
        browser.press("Next: P3");
        log("P3 shade", "0.0", "on target");
    }

    private void log(String point, String amount, String answer) {
        browser.await(point).type("amount", amount).press("Log " + amount).await(answer);
    }

    /** Among all by its urgency, and first in its own room, in which all else is well. */
    private void reviewShows(Story story) {
        browser.signInAs("supervisor").open("/review").await("Review");
        reviewIsSorted();
        browser.press(By.tagName("summary")).choose("room", "Annex").press("Show");
        browser.await("Show all").scrollTo(".finding .zones").await(By.cssSelector(".finding .zones .legend"));
        String first = browser.texts(".finding").get(0);
        assertThat(first)
                .contains(story.enclosure() + " ", story.urgency(), story.found() + "\nUVI", "basking: ", "shade: ");
    }

    private void reviewIsSorted() {
        List<String> found = browser.texts(".finding .margin strong");
        assertThat(found)
                .isSortedAccordingTo((one, other) -> Integer.compare(URGENCIES.indexOf(one), URGENCIES.indexOf(other)));
        assertThat(URGENCIES).containsAll(found);
    }

    private void moveTheLamp(Story story) {
        String rig = "/enclosures/" + ids.enclosure(story.enclosure()) + "/rig";
        long lamp = ids.partOfRig("fitting", story.enclosure());
        browser.press("Open " + story.enclosure()).press(By.cssSelector("main a[href='" + rig + "']"));
        browser.press(By.cssSelector("main a[href='" + rig + "/lamps/" + lamp + "/move']"));
        browser.await("Move the lamp")
                .type("zMetres", story.heightMetres())
                .type("note", "The basking place was off target")
                .press("Show what it will do")
                .await("What it will do");
        double ratio = Double.parseDouble(browser.texts("#foreseen tbody tr:first-child td:last-child")
                .get(0)
                .replaceAll("[^0-9.]", ""));
        assertThat(ratio < 1).as("the lamp was raised, so less is predicted").isEqualTo(story.raises());
        assertThat(ids.partOfRig("fitting", story.enclosure()))
                .as("nothing is changed by looking")
                .isEqualTo(lamp);
        browser.press("Save").await("Stored.");
        assertThat(browser.text()).contains("The basking place was off target", story.heightMetres());
    }

    /** What was over the ceiling interrupts every page until somebody has seen it. */
    private void seeTheAlarms(Story story) {
        By seen = By.xpath("//section[@role='alert']/div[contains(., '" + story.enclosure() + "')]//button");
        boolean alarmed = story.urgency().equals("over the ceiling");
        assertThat(alarms(story)).hasSize(alarmed ? 1 : 0);
        if (alarmed) {
            browser.press(seen);
            assertThat(alarms(story)).isEmpty();
        }
    }

    private List<String> alarms(Story story) {
        return browser.texts(".alarms .row").stream()
                .filter(text -> text.contains(story.enclosure()))
                .toList();
    }

    private void reviewIsClear(Story story) {
        browser.signInAs("supervisor").open("/review").await("Review");
        assertThat(browser.texts(".finding h2")).noneMatch(heading -> heading.contains(story.enclosure()));
    }

    private void theVetFindsBoth(Story story) {
        browser.signInAs("vet").open("/animals").press(story.animal()).await("Readings");
        List<String> rows = browser.texts("tbody tr");
        assertThat(rows).anySatisfy(row -> assertThat(row).contains(story.enclosure() + " P1", story.found()));
        assertThat(rows).anySatisfy(row -> assertThat(row).contains(story.enclosure() + " P1", "4.6", "on target"));
        browser.press("Print or file").await("One page of A4");
        assertThat(browser.text()).contains(story.animal(), "Stays and doses", "UV zone 3");
    }
}
