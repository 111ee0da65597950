package dapple.process;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.process.PlainBrowser.Page;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The packaged program on an empty folder, without the demo: begun once, by whoever can read its log. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FirstRunIT {
    private static final Pattern CODE = Pattern.compile("First run: open /first-run and enter the code (\\S+)");
    private static final String WRONG_CODE = "0000-0000-0000";
    private static final String PASSWORD = "four plain words here";

    private Program program;
    private Page whileEmpty;
    private Page withWrongCode;
    private Page afterWrongCode;
    private Page withCode;

    @BeforeAll
    void beginTheInstallation(@TempDir Path data) throws IOException, InterruptedException {
        program = Program.start(data);
        PlainBrowser browser = browser();
        whileEmpty = browser.open("/");
        withWrongCode = begin(browser, "wrong", WRONG_CODE);
        afterWrongCode = browser.get("/");
        withCode = begin(browser, "ada.first", program.logged(CODE));
    }

    @AfterAll
    void endTheProgram() {
        if (program != null) {
            program.close();
        }
    }

    private PlainBrowser browser() {
        return new PlainBrowser(program.address());
    }

    private static Page begin(PlainBrowser browser, String signInName, String code)
            throws IOException, InterruptedException {
        Map<String, String> form = new HashMap<>(Map.of("siteName", "Larkmoor", "timeZone", "Europe/London"));
        form.putAll(Map.of("signInName", signInName, "name", "Ada First", "password", PASSWORD));
        form.putAll(Map.of("code", code, "_csrf", browser.get("/first-run").field("_csrf")));
        return browser.post("/first-run", form);
    }

    @Test
    void leadsEveryoneToTheFirstRunPageWhileEmpty() {
        assertThat(whileEmpty.path()).isEqualTo("/first-run");
    }

    @Test
    void saysThatAWrongCodeIsWrong() {
        assertThat(withWrongCode.body()).contains("This is not the code in the log.");
    }

    @Test
    void isStillEmptyAfterAWrongCode() {
        assertThat(afterWrongCode.location()).contains("/first-run");
    }

    @Test
    void beginsWithTheCodeInTheLog() {
        assertThat(withCode.location()).contains("/sign-in?begun");
    }

    @Test
    void letsTheFirstAdministratorIn() throws IOException, InterruptedException {
        PlainBrowser browser = browser();
        browser.signIn("ada.first", PASSWORD);
        assertThat(browser.get("/people").status()).isEqualTo(200);
    }

    @Test
    void cannotBeBegunTwice() throws IOException, InterruptedException {
        assertThat(browser().get("/first-run").status()).isEqualTo(404);
    }

    @Test
    void showsNoDemoAccounts() throws IOException, InterruptedException {
        assertThat(browser().get("/sign-in").body()).contains("signInName").doesNotContain("keeper", "<code>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"keeper", "supervisor", "vet", "admin", "ada.first"})
    void letsNobodyInWithTheDemoPassword(String signInName) throws IOException, InterruptedException {
        assertThat(browser().signIn(signInName, "dapple").location()).contains("/sign-in?again");
    }

    @Test
    void saysThatItIsUp() throws IOException, InterruptedException {
        assertThat(browser().get("/actuator/health").body()).contains("\"status\":\"UP\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"env", "beans", "metrics", "heapdump", "threaddump", "configprops", "loggers", "info"})
    void tellsNothingElseOfItself(String endpoint) throws IOException, InterruptedException {
        PlainBrowser browser = browser();
        browser.signIn("ada.first", PASSWORD);
        assertThat(browser.get("/actuator/" + endpoint).status()).isEqualTo(404);
    }
}
