package dapple.browser;

import dapple.testing.NeedsChromium;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;

/** The demo on a free port and a fresh database file, with a {@link Browser} to look at it. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@NeedsChromium
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@ActiveProfiles("demo")
@ContextConfiguration(initializers = FreshFolder.class)
@Import({Browser.class, DemoIds.class})
@interface BrowserTest {}
