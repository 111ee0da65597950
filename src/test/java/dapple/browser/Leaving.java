package dapple.browser;

import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Sees to it that a press that leads to another page has led there before anything is looked at. */
final class Leaving {
    private static final String LEADS_AWAY = """
            const pressed = arguments[0];
            const leads = pressed.matches('a[href]')
                || (pressed.type === 'submit' && pressed.form !== null && pressed.form.checkValidity());
            if (leads) document.documentElement.dataset.left = 'soon';
            return leads;
            """;
    private static final String HAS_LEFT =
            "return !('left' in document.documentElement.dataset) && document.readyState === 'complete';";

    private final ChromeDriver driver;
    private final boolean leads;

    private Leaving(ChromeDriver driver, boolean leads) {
        this.driver = driver;
        this.leads = leads;
    }

    /** Before the press. */
    static Leaving by(ChromeDriver driver, WebElement pressed) {
        return new Leaving(driver, Boolean.TRUE.equals(driver.executeScript(LEADS_AWAY, pressed)));
    }

    /** After the press. */
    void await(WebDriverWait patience) {
        if (leads) {
            patience.ignoring(JavascriptException.class)
                    .until(unused -> Boolean.TRUE.equals(driver.executeScript(HAS_LEFT)));
        }
    }
}
