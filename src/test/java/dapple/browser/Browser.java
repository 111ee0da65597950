package dapple.browser;

import dapple.testing.Chromium;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.stream.StreamSupport;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.http.ClientConfig;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.context.annotation.Lazy;
import org.springframework.core.env.Environment;
import org.springframework.util.FileSystemUtils;

/** Chromium on the running program: signs in, opens pages, and presses what a person would press. */
@TestComponent
@Lazy
class Browser implements DisposableBean {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Duration GLANCE = Duration.ofMillis(50);
    private static final int WIDEST_PHONE = 640;
    private static final String SESSION = "dapple";

    /** Means this machine under a name that browsers do not trust without HTTPS, as on a local network. */
    private static final String PLAIN_HOST = "plain.test";

    /** The middle of an element on the screen. */
    private static final String MIDDLE = """
            arguments[0].scrollIntoView({ block: 'center' });
            const box = arguments[0].getBoundingClientRect();
            return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
            """;

    private static final String WORDS = """
            return [...document.querySelectorAll(arguments[0])].map(each => each.checkVisibility() ? each.innerText : '');
            """;

    private final Path profile = FreshFolder.create();
    private final Map<String, String> sessions = new HashMap<>();
    private final ChromeDriver driver;
    private final String home;

    @Autowired
    Browser(Environment environment) {
        this(home(environment), Map.of());
    }

    private Browser(String home, Map<String, Object> preferences) {
        this.home = home;
        driver = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(Chromium.driver().toFile())
                        .build(),
                options().setExperimentalOption("prefs", preferences),
                ClientConfig.defaultConfig().readTimeout(PATIENCE.multipliedBy(2)));
    }

    /** A browser in which pages may run no scripts. */
    static Browser withoutScripts(Environment environment) {
        return new Browser(home(environment), Map.of("profile.managed_default_content_settings.javascript", 2));
    }

    /** A browser of its own, with nothing kept from another, on a program at an address. */
    static Browser on(String home) {
        return new Browser(home, Map.of());
    }

    /** As a phone on a local network comes to the program: by plain HTTP, without a secure context. */
    static Browser overPlainHttp(Environment environment) {
        return on(home(environment).replace("127.0.0.1", PLAIN_HOST));
    }

    static String home(Environment environment) {
        return "http://127.0.0.1:" + environment.getRequiredProperty("local.server.port");
    }

    /** Cuts this page from the network, or joins it again, as the browser's own controls do. */
    Browser offline(boolean isCut) {
        command("Network.enable", Map.of());
        command(
                "Network.emulateNetworkConditions",
                Map.of("offline", isCut, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
        return this;
    }

    /** Closes the tab, and opens a fresh one. */
    Browser anotherTab() {
        String old = driver.getWindowHandle();
        driver.switchTo().newWindow(WindowType.TAB);
        String fresh = driver.getWindowHandle();
        driver.switchTo().window(old).close();
        driver.switchTo().window(fresh);
        return this;
    }

    /** Nothing but this machine can be reached. */
    private ChromeOptions options() {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(Chromium.browser().toFile());
        options.setCapability("goog:loggingPrefs", logs);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--force-prefers-reduced-motion",
                "--host-resolver-rules=MAP " + PLAIN_HOST + " 127.0.0.1, MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
                "--user-data-dir=" + profile);
        return options;
    }

    /** A screen of this size in CSS pixels; a narrow one is a phone with touch. */
    Browser at(int width, int height) {
        boolean phone = width < WIDEST_PHONE;
        command(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", phone));
        command("Emulation.setTouchEmulationEnabled", Map.of("enabled", phone));
        return this;
    }

    Map<String, Object> command(String name, Map<String, Object> parameters) {
        return driver.executeCdpCommand(name, parameters);
    }

    Browser open(String path) {
        driver.get(home + path);
        return this;
    }

    /** Signs in by the form. */
    Browser signIn(String name, String password) {
        signOut();
        open("/sign-in").type("signInName", name).type("password", password).press("Sign in");
        return this;
    }

    /** Signs one of the demo's people in, once; later their session is taken up again. */
    Browser signInAs(String name) {
        Optional.ofNullable(sessions.get(name)).ifPresentOrElse(session -> keep(SESSION, session), () -> {
            signIn(name, "dapple").await("Today");
            sessions.put(
                    name,
                    Optional.ofNullable(driver.manage().getCookieNamed(SESSION))
                            .map(Cookie::getValue)
                            .orElseThrow());
        });
        return this;
    }

    /** Nobody is signed in. */
    Browser signOut() {
        command("Network.deleteCookies", Map.of("name", SESSION, "url", home));
        return this;
    }

    /** The colours of this device, as the account page sets them. */
    Browser scheme(String name) {
        keep("scheme", name);
        return this;
    }

    private void keep(String cookie, String text) {
        command("Network.setCookie", Map.of("name", cookie, "value", text, "url", home));
    }

    /** Presses the first visible link or button with these words. */
    Browser press(String words) {
        return press(named(words));
    }

    /** Presses the first visible element found. */
    Browser press(By where) {
        WebElement found = patience().until(unused -> visible(where).orElse(null));
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'});", found);
        Leaving leaving = Leaving.by(driver, found);
        found.click();
        leaving.await(patience());
        return this;
    }

    /** Taps a button with a finger: touch events alone, from which the browser makes the click. */
    Browser tap(String words) {
        WebElement found = patience().until(unused -> visible(named(words)).orElse(null));
        Object middle = run(MIDDLE, found);
        command("Input.dispatchTouchEvent", Map.of("type", "touchStart", "touchPoints", List.of(middle)));
        command("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
        return this;
    }

    private static By named(String words) {
        return By.xpath(
                String.format("//*[self::a or self::button][normalize-space(.)='%1$s' or @aria-label='%1$s']", words));
    }

    private Optional<WebElement> visible(By where) {
        return driver.findElements(where).stream()
                .filter(WebElement::isDisplayed)
                .findFirst();
    }

    /** Types into the field with this id, in place of what stands there. */
    Browser type(String field, String text) {
        WebElement found = driver.findElement(By.id(field));
        found.clear();
        found.sendKeys(text);
        return this;
    }

    /** Chooses a file in the field with this id, as from the camera. */
    Browser attach(String field, Path file) {
        driver.findElement(By.id(field)).sendKeys(file.toString());
        return this;
    }

    /** Chooses what has these words in the list with this id. */
    Browser choose(String list, String words) {
        new Select(driver.findElement(By.id(list))).selectByVisibleText(words);
        return this;
    }

    /** Brings the first element found into view. */
    Browser scrollTo(String css) {
        driver.executeScript("arguments[0].scrollIntoView();", driver.findElement(By.cssSelector(css)));
        return this;
    }

    /** Waits until the page says this. */
    Browser await(String words) {
        patience()
                .withMessage(() -> "'" + words + "' is not on " + path() + ", which says: " + text())
                .until(unused -> text().contains(words));
        return this;
    }

    /** Waits until it is there to be seen. */
    Browser await(By where) {
        patience()
                .withMessage(() -> where + " is not on " + path())
                .until(unused -> visible(where).orElse(null));
        return this;
    }

    /** Waits until something holds. */
    Browser awaitThat(String what, BooleanSupplier holds) {
        return awaitThat(() -> what, PATIENCE, holds);
    }

    /** Waits for longer than a page takes. */
    Browser awaitThat(Supplier<String> what, Duration howLong, BooleanSupplier holds) {
        patience()
                .withTimeout(howLong)
                .withMessage(() -> what.get() + ", on " + path())
                .until(unused -> holds.getAsBoolean());
        return this;
    }

    /** Presses keys wherever the focus is, even while the page renews what has it. */
    Browser keys(CharSequence keys) {
        new Actions(driver).sendKeys(keys).perform();
        return this;
    }

    /** Presses a key while another is held down. */
    Browser keysWith(Keys held, CharSequence keys) {
        new Actions(driver).keyDown(held).sendKeys(keys).keyUp(held).perform();
        return this;
    }

    private WebDriverWait patience() {
        WebDriverWait wait = new WebDriverWait(driver, PATIENCE);
        wait.pollingEvery(GLANCE).ignoring(StaleElementReferenceException.class);
        return wait;
    }

    /** What the page says between its mast and its tabs. */
    String text() {
        return String.join("\n", texts("main"));
    }

    /** The words of each element found; none for what is hidden. */
    List<String> texts(String css) {
        return ((List<?>) run(WORDS, css)).stream().map(String::valueOf).toList();
    }

    /** Where the browser is, without the address of the server. */
    String path() {
        return Optional.ofNullable(driver.getCurrentUrl()).orElse("").substring(home.length());
    }

    /** The HTTP status of the page. */
    int status() {
        return ((Number) run("return performance.getEntriesByType('navigation')[0].responseStatus;")).intValue();
    }

    Object run(String script, Object... arguments) {
        return Optional.ofNullable(driver.executeScript(script, arguments)).orElse("");
    }

    Object runAsync(String script, Object... arguments) {
        return Optional.ofNullable(driver.executeAsyncScript(script, arguments)).orElse("");
    }

    /** Warnings and errors in the browser's console since it was last asked, its policy's refusals among them. */
    List<String> complaints() {
        return StreamSupport.stream(driver.manage().logs().get(LogType.BROWSER).spliterator(), false)
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    byte[] picture() {
        return driver.getScreenshotAs(OutputType.BYTES);
    }

    @Override
    public void destroy() throws Exception {
        driver.quit();
        FileSystemUtils.deleteRecursively(profile);
    }
}
